import { goalConflictsIn } from "../analysis/possibility/goal-conflicts.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** A goal that players of one hand, or of some levels, cannot meet. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "A plan is for players of either hand: `in-to-out` follows the hand and `right` does not, so that a goal with one may need what a requirement with the other rules out.",
  run: (node, context) => reportRemarks(node, context, remarksOn, true),
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    require start-side at least 1° push
    success «at least 5 of 10 shots with start-direction at least 1° right»
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    require start-side at least 1° push
    success at least 5 of 10 shots with start-direction at least 1° right or start-direction at least 1° left
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return goalConflictsIn(meaning)
    .filter(({ concernsAll }) => !concernsAll)
    .map(({ remark }) => remark);
}
