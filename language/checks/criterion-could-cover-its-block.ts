import { numberOf } from "../types/parameters.ts";
import { shotsOf } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";

/** A criterion over fewer shots than its block has. */
export const check = defineCheck({
  on: ["CountCriterion"],
  reason: "A count of so many shots is over the first of them; the rest of the block has no say in it.",
  run(criterion, { report }) {
    const asked = shotsOf(criterion)?.asked;
    const outOf = numberOf(criterion.outOf);
    const count = numberOf(criterion.count);
    if (asked === undefined || outOf === undefined || count === undefined) return;
    if (outOf >= asked || outOf < count || outOf === 0) return;
    const cst = cstOf(criterion, "outOf");
    if (cst === undefined || criterion.outOf === undefined) return;
    report({
      message: `Only the first ${outOf} of the block's ${asked} shots count here. Ask for ${count} of ${asked} if all are meant.`,
      node: criterion,
      cst,
      fixes: [{ title: `Count all ${asked} shots`, edits: [writeNumber(criterion.outOf, String(asked))] }],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    12 shots
    target start-direction within ±2°
    success at least 7 of «10» shots on target
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" test {
    12 shots
    target start-direction within ±2°
    success at least 7 of 12 shots on target
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    12 shots
    target start-direction within ±2°
    success at least 7 of 12 shots on target
  }
}`,
});
