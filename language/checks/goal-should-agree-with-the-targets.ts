import { goalsOffTarget } from "../analysis/possibility/goal-conflicts.ts";
import { goalsAgainstEachOther } from "../analysis/possibility/goals-together.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** A goal that needs shots which miss the block's targets. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason: "Who aims at one thing and is judged by its opposite learns neither.",
  run: (node, context) => reportRemarks(node, context, remarksOn),
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target carry within 5 yd of 150 yd
    success {
      at least 6 of 10 shots on target
      «at least 3 of 10 shots with carry below 120 yd»
    }
  }
  block "Face" {
    10 shots
    target face-angle within ±1°
    target club-path within ±1°
    success «average face-to-path at least 3° open»
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target carry within 5 yd of 150 yd
    success {
      at least 6 of 10 shots on target
      at least 3 of 10 shots with carry below 148 yd
      at most 3 of 10 shots with carry below 120 yd
      worst carry at most 140 yd
    }
  }
}`,
});

/** A goal that other goals rule out is a mistake, and is told as one. */
function remarksOn(meaning: Meaning): Reported[] {
  const atOdds = new Set(goalsAgainstEachOther(meaning).map(({ location }) => location));
  return goalsOffTarget(meaning)
    .filter(({ goal }) => !atOdds.has(goal.location))
    .map(({ remark }) => remark);
}
