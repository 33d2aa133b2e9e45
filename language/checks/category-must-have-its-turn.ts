import { rulesWithoutTurn } from "../analysis/possibility/names-in-turn.ts";
import { type CategoryRule, isCategoryRule, type Metric } from "../generated/tree/ast.ts";
import { lowerMetric } from "../lowering/vocabulary.ts";
import { defineCheck } from "./check.ts";
import { rangeOf } from "./edits.ts";
import type { Meanings } from "./meanings.ts";
import type { Remembered } from "./remembered.ts";
import { code, listed } from "./wording.ts";

/** A rule for a name that no shot gets to: none meets it, or all that do meet one before it. */
export const check = defineCheck({
  on: ["Metric"],
  looksAtMeaning: true,
  reason:
    "A shot has the first name whose line it meets. What stands behind a line that asks for less is never looked at.",
  run(metric, { meanings, report }) {
    if (!metric.statements.some(isCategoryRule)) return;
    const findings = meanings.answerOn(metric, check, () => findingsOn(metric, meanings));
    for (const finding of findings) report({ ...finding, node: metric });
  },
  reporting: `
metric length-of-carry is one of long, longer, short, odd {
  long where carry above 150 yd
  «longer where carry above 170 yd»
  short where carry at most 150 yd
  «odd where carry above 100 yd or carry below 50 yd»
}

metric side is one of apart, along, open-faced {
  apart where face-angle at least 2° open and club-path at most 1° in-to-out
  along where club-path above 1° in-to-out
  «open-faced where face-angle at least 3° open»
}

metric speed-kept is one of good, poor, lost {
  poor where smash-factor below 1.4
  good where smash-factor at least 1.4
  «lost where ball-speed at most 90 mph and club-speed at least 90 mph»
}

metric size is one of small, huge {
  small where carry below 100 yd
  «huge where carry above 900 yd»
}`,
  silent: `
metric length-of-carry is one of long, longer, short, odd {
  longer where carry above 170 yd
  long where carry above 150 yd
  short where carry at most 50 yd
  odd where carry above 100 yd or carry below 60 yd
}

metric side is one of apart, along, open-faced {
  apart where face-angle at least 2° open and club-path at most 1° in-to-out
  along where club-path above 2° in-to-out
  open-faced where face-angle at least 3° open
}`,
});

function findingsOn(metric: Metric, meanings: Meanings): Remembered[] {
  const model = meanings.isSound(metric) ? meanings.attempt(metric, () => lowerMetric(metric)) : undefined;
  const rules = metric.statements.filter(isCategoryRule);
  const inWords = (rule: CategoryRule) =>
    `line ${rangeOf(rule).start.line + 1} (${code(rule.$cstNode?.text ?? "")})`;
  return (model === undefined ? [] : rulesWithoutTurn(model, meanings.vocabulary())).flatMap(
    ({ place, takenBy, why }) => {
      const rule = rules[place];
      const lines = takenBy.flatMap((before) => rules[before] ?? []).map(inWords);
      const message =
        lines.length === 0
          ? `No shot does what this line asks for${why}. Check the numbers and their units.`
          : `Every shot that meets this line meets ${listed(lines, "or")} first${why}. Put this line before, or take it out.`;
      return rule === undefined ? [] : [{ message, range: rangeOf(rule) }];
    },
  );
}
