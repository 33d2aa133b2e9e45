import { linesOfFinding } from "../analysis/finding-lines.ts";
import { goalConflictsIn } from "../analysis/possibility/goal-conflicts.ts";
import { goalsAgainstEachOther } from "../analysis/possibility/goals-together.ts";
import { lowerFinding } from "../lowering/finding.ts";
import { defineCheck } from "./check.ts";
import { fileName } from "./meanings.ts";

/** A finding that no shots can show. */
export const check = defineCheck({
  on: ["Finding"],
  looksAtMeaning: true,
  reason: "All lines of a finding must hold. Where no shots can do that, it is looked for and never found.",
  run(finding, { meanings, report }) {
    if (!meanings.isSound(finding)) return;
    const model = meanings.attempt(finding, () => lowerFinding(finding, fileName, () => undefined));
    if (model === undefined) return;
    const subject = linesOfFinding(model, meanings.vocabulary());
    const single = goalConflictsIn(subject).filter(({ concernsAll }) => concernsAll);
    const remarks = [...single.map(({ remark }) => remark), ...goalsAgainstEachOther(subject)];
    for (const { message, location, related } of remarks) {
      report({ message, node: finding, range: location.range, related });
    }
  },
  reporting: `
finding "Long and short" {
  when «at least 3 of 10 shots with carry at least 150 yd and total at most 120 yd»
  check "The table."
}
finding "Both sides" {
  when average start-direction at least 3° left
  when «average start-direction at least 1° right»
  check "The aim."
}
finding "Mostly both" {
  when at least 60 % of shots with shape is draw
  when «at least 50 % of shots with shape is fade»
  check "The grip."
}`,
  silent: `
finding "Long and short" {
  when at least 3 of 10 shots with carry at least 100 yd and total at most 120 yd
  check "The table."
}
finding "Both sides" {
  when average start-direction at most 3° left
  when average start-direction at most 1° right
  check "The aim."
}
finding "Mostly both" {
  when at least 50 % of shots with shape is draw
  when at least 50 % of shots with shape is fade
  when at most 3 shots with carry at least 0 yd
  check "The grip."
}`,
});
