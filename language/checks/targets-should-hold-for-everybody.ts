import { conflictsIn } from "../analysis/possibility/block-conflicts.ts";
import { conflictRemark } from "../analysis/possibility/conflict-words.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** Targets and requirements that only players of one hand, or of some levels, can meet together. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "A plan is for players of either hand: `in-to-out` follows the hand and `right` does not, so that a line with both may ask a left-hander for what cannot be.",
  run: (node, context) => reportRemarks(node, context, remarksOn, true),
  reporting: `
window "Path" {
  is club-path within 2° of 1° in-to-out
  at level "first year" is club-path within 2° of 6° out-to-in
}

plan "Gate" {
  block "Start" {
    10 shots
    target club-path at least 2° in-to-out
    «require club-path at least 1° right»
  }
  block "First years" {
    10 shots
    target inside "Path"
    «require club-path at least 1° in-to-out»
  }
}`,
  silent: `
window "Path" {
  is club-path within 2° of 1° in-to-out
  at level "first year" is club-path within 3° of 1° in-to-out
}

plan "Gate" {
  block "Start" {
    10 shots
    target club-path at least 2° in-to-out
    require start-direction at least 1° right
  }
  block "First years" {
    10 shots
    target inside "Path"
    require club-path at least 1° in-to-out
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return conflictsIn(meaning)
    .filter(({ concernsAll, culprit }) => !concernsAll && culprit.role !== "leave out")
    .map((conflict) => conflictRemark(conflict, meaning));
}
