import { conflictsIn } from "../analysis/possibility/block-conflicts.ts";
import { conflictRemark } from "../analysis/possibility/conflict-words.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** Shots left out that are just those the block asks for. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "Shots that are left out are set aside before anything is counted. When they are those that are asked for, no good shot is ever counted.",
  run: (node, context) => reportRemarks(node, context, remarksOn, true),
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    «leave out shots where carry at least 140 yd»
    target carry within 5 yd of 150 yd
  }
  block "Strike" {
    10 shots
    require ball-speed at least 120 mph
    require club-speed at most 80 mph
    «leave out shots where smash-factor above 1.4»
  }
  block "All" {
    10 shots
    «leave out shots where spin-rate at least 0 rpm»
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    leave out shots where carry at most 140 yd
    target carry within 5 yd of 150 yd
  }
  block "Strike" {
    10 shots
    require ball-speed at least 110 mph
    require club-speed at most 80 mph
    leave out shots where smash-factor above 1.4
  }
  block "All" {
    10 shots
    leave out shots where spin-rate at least 20000 rpm
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return conflictsIn(meaning)
    .filter(({ culprit }) => culprit.role === "leave out")
    .map((conflict) => conflictRemark(conflict, meaning));
}
