import { redundantLines } from "../analysis/possibility/redundancy.ts";
import { type CheckContext, defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import type { Meaning } from "./meanings.ts";
import { nodeAt, type Reported, reportRemarks } from "./remarks.ts";

/** A target or requirement that every shot meets which meets the others. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "A line that changes nothing makes the task look harder than it is, or hides that a number is wrong.",
  run: (node, context) => reportRemarks(node, context, remarksOn),
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    require carry at least 150 yd
    «require carry at least 140 yd»
    target carry at most 160 yd
    «target total at least 145 yd»
  }
  block "Face" {
    10 shots
    target face-angle within ±1°
    target club-path within ±1°
    «target face-to-path within ±2.5°»
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
    require carry at least 150 yd
    target carry at most 160 yd
  }
  block "Face" {
    10 shots
    target face-angle within ±1°
    target club-path within ±1°
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    require carry at least 150 yd
    require carry at most 400 yd
    target total at least 155 yd
  }
  block "Strike" {
    10 shots
    require smash-factor at least 1.4
    target smash-factor at least 1.4
    success at least 7 of 10 shots on target
  }
  block "Face" {
    10 shots
    target face-angle within ±1°
    target club-path within ±1°
    target face-to-path within ±1.5°
  }
}`,
});

function remarksOn(meaning: Meaning, { document }: CheckContext): Reported[] {
  return redundantLines(meaning).map((remark) => ({
    ...remark,
    unnecessary: true,
    fixes: [
      {
        title: "Take the line out",
        edits: [remove(document, rangeOf(nodeAt(remark.location, meaning.node)))],
      },
    ],
  }));
}
