import { numberOf } from "../types/parameters.ts";
import { mostShots } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";
import { shots } from "./wording.ts";

/** More hits are asked for than shots are looked at. */
export const check = defineCheck({
  on: ["CountCriterion"],
  reason: "A count that no number of hits can reach is never met, however well the player does.",
  run(criterion, { report }) {
    const most = criterion.outOf === undefined ? mostShots(criterion) : numberOf(criterion.outOf);
    const hits = numberOf(criterion.count);
    if (most === undefined || hits === undefined || hits <= most) return;
    if (cstOf(criterion, "count") === undefined) return;
    report({
      message: `${hits} of ${shots(most)} is more hits than shots. Ask for at most ${most}.`,
      node: criterion,
      property: "count",
      fixes: [{ title: `Ask for ${most} of ${most}`, edits: [writeNumber(criterion.count, String(most))] }],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least «12» of 10 shots on target
      at least «11» shots with carry at least 150 yd
    }
  }
  block "Again" from "Line"
}

drill "Line" (hits: ratio = 12) test {
  10 shots
  target start-direction within ±2°
  success at least «hits» of 10 shots on target
}`,
  fixed: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 10 of 10 shots on target
      at least 10 shots with carry at least 150 yd
    }
  }
  block "Again" from "Line"
}

drill "Line" (hits: ratio = 10) test {
  10 shots
  target start-direction within ±2°
  success at least hits of 10 shots on target
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    at least 10 shots
    target start-direction within ±2°
    success {
      at least 7 of 10 shots on target
      at least 11 of 12 shots with carry at least 150 yd
      at least 11 shots with carry at least 140 yd
    }
  }
}`,
});
