import { outOfReach } from "../analysis/decidability/out-of-reach.ts";
import { askForShots, stateConfidence } from "./ability-fixes.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** A sentence about ability that no result of the shots asked for can refute. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "A goal that can be met or stay open, but never be missed, does not tell a coach when to step back.",
  run: (node, context) => reportRemarks(node, context, remarksOn),
  reporting: `
plan "Gate" {
  block "Length" test {
    12 shots
    success «90th percentile of carry at least 150 yd at 90 % confidence»
  }
}`,
  fixed: `
plan "Gate" {
  block "Length" test {
    22 shots
    success 90th percentile of carry at least 150 yd at 90 % confidence
  }
}`,
  silent: `
plan "Gate" {
  block "Length" test {
    12 shots
    success median carry at least 150 yd at 90 % confidence
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return outOfReach(meaning)
    .filter(({ verdict }) => verdict === "missed")
    .map(({ goal, remark, shots, confidence }) => ({
      ...remark,
      fixes: [...askForShots(meaning, shots), ...stateConfidence(meaning, goal.location, confidence)],
    }));
}
