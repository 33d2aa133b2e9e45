import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { numbersOf, type Role } from "./numbers.ts";

/** More of anything that is counted than a lifetime of practice has. */
const MOST_COUNTED = 1_000_000;

/** Larger numbers lose digits when they are computed with. */
const LARGEST = 1e15;

const COUNTED: ReadonlySet<Role> = new Set<Role>([
  "Shots.count",
  "CountCriterion.count",
  "CountCriterion.outOf",
  "RunCriterion.length",
  "LoadCriterion.count",
  "LoadLimit.count",
  "Usual.shots",
  "Gate.times",
  "HeaderRow.row",
]);

/** A number that is too large to be meant. */
export const check = defineCheck({
  on: ["Count", "Quantity", "LoadLimit", "Usual", "Gate", "HeaderRow", "BlockStart", "ShownIn", "Unit"],
  reason: "No practice has so many, and what is computed from such a number is wrong in its last digits.",
  run(node, { report }) {
    for (const { value, property, roles } of numbersOf(node)) {
      if (value <= MOST_COUNTED) continue;
      if (value <= LARGEST && !roles().some((role) => COUNTED.has(role))) continue;
      const cst = cstOf(node, property);
      if (cst === undefined) continue;
      report({ message: "This number is too large to be meant. Write a smaller one.", node, cst });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    «100000000» shots
    target carry at least «1000000000000000000» yd
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    100 shots
    target carry at least 10000 cm
  }
}`,
});
