import { AstUtils } from "langium";
import { neverFoundIn } from "../analysis/decidability/findings-in-baselines.ts";
import { isBlock, isPlan } from "../generated/tree/ast.ts";
import { lowerFinding } from "../lowering/finding.ts";
import { isBaseline } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { fileName } from "./meanings.ts";

/** A finding that the shots of no baseline of the plan can show. */
export const check = defineCheck({
  on: ["LooksFor"],
  looksAtMeaning: true,
  reason:
    "A pattern that takes more shots than the baseline has, or shots with another club, is never found.",
  run(line, { meanings, report }) {
    const plan = AstUtils.getContainerOfType(line, isPlan);
    const baselines = plan?.statements.filter(isBlock).filter(isBaseline) ?? [];
    const blocks = baselines.map((block) => meanings.ofBlock(block)?.block);
    if (blocks.length === 0) return;
    for (const [index, { ref: finding }] of line.findings.entries()) {
      if (finding === undefined || !meanings.isSound(finding)) continue;
      const model = meanings.attempt(finding, () => lowerFinding(finding, fileName, () => undefined));
      if (model === undefined) continue;
      const vocabulary = meanings.vocabulary(AstUtils.getDocument(finding));
      const found = blocks.map((block) => block && neverFoundIn(block, model, vocabulary));
      const [first] = found;
      if (first === undefined || found.includes(undefined)) continue;
      report({ ...first, node: line, property: "findings", index });
    }
  },
  reporting: `
finding "Cut" {
  when at least 6 of 12 shots with shape is fade
  check "The path."
}
finding "Wild" {
  when at least 80 % of shots with curve at least 10 yd fade at 95 % confidence
  check "The face."
}
finding "Tee shots" {
  for driver
  when average launch-angle at most 8° up
  check "The height of the tee."
}
finding "Thin" {
  when at least 2 of 4 shots with smash-factor below 1.1
  check "The low point."
}

plan "Gate" {
  look for «"Cut"», «"Wild"», «"Tee shots"», «"Thin"»
  block "Look" baseline {
    4 shots with 7-iron
    leave out shots where smash-factor below 1.15
  }
}`,
  silent: `
finding "Cut" {
  when at least 6 of 12 shots with shape is fade
  check "The path."
}
finding "Wild" {
  when at least 80 % of shots with curve at least 10 yd fade at 95 % confidence
  check "The face."
}
finding "Tee shots" {
  for driver
  when average launch-angle at most 8° up
  check "The height of the tee."
}
finding "Thin" {
  when at least 2 of 4 shots with smash-factor below 1.2
  check "The low point."
}

plan "Gate" {
  look for "Cut", "Wild", "Tee shots", "Thin"
  block "Look" baseline {
    14 shots with 7-iron
    4 shots with driver
    leave out shots where smash-factor below 1.15
  }
}`,
});
