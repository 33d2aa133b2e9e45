import { conflictsIn } from "../analysis/possibility/block-conflicts.ts";
import { conflictRemark } from "../analysis/possibility/conflict-words.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** Targets and requirements of one side for the face, and of the other for where the ball starts and how it bends. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "A face that is open to the path makes a fade, and a ball starts between face and path. Whoever asks for the contrary asks for bad strikes, or for wind.",
  run: (node, context) => reportRemarks(node, context, remarksOn, true),
  reporting: `
plan "Gate" {
  block "Shape" {
    10 shots
    target shape is draw
    «require face-to-path at least 2° open»
  }
  block "Start" {
    10 shots
    target club-path at least 1° in-to-out
    target face-angle at least 2° open
    «target start-side at least 1° pull»
  }
  block "Axis" {
    10 shots
    target spin-axis at least 3° fade
    «target curve at least 4 yd draw»
  }
}`,
  silent: `
plan "Gate" {
  block "Shape" {
    10 shots
    target shape is draw
    require face-to-path between 2° closed and 1° open
  }
  block "Start" {
    10 shots
    target club-path at least 4° out-to-in
    target face-angle at least 2° open
    target start-side at least 1° pull
  }
  block "Axis" {
    10 shots
    target spin-axis at least 3° draw
    target curve at least 4 yd draw
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  if (conflictsIn(meaning).length > 0) return [];
  const subject = { ...meaning, vocabulary: meaning.vocabulary.ofCentredStrikes };
  return conflictsIn(subject)
    .filter(({ culprit }) => culprit.role !== "leave out")
    .map((conflict) => conflictRemark(conflict, subject, "only a strike off the middle, or wind,"));
}
