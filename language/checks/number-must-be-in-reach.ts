import type { AstNode } from "langium";
import { type CheckContext, defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";

/** More of anything that is counted than a lifetime of practice has. */
const MOST_COUNTED = 1_000_000;

/** Larger numbers lose digits when they are computed with. */
const LARGEST = 1e15;

const NUMBERS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  Shots: { count: MOST_COUNTED },
  CountCriterion: { count: MOST_COUNTED, outOf: MOST_COUNTED },
  RunCriterion: { length: MOST_COUNTED },
  HeaderRow: { row: MOST_COUNTED },
  BlockStart: { row: LARGEST },
  Quantity: { value: LARGEST },
  ShownIn: { step: LARGEST },
  Unit: { factor: LARGEST },
};

/** A number that is too large to be meant. */
export const check = defineCheck({
  on: ["Shots", "CountCriterion", "RunCriterion", "HeaderRow", "BlockStart", "Quantity", "ShownIn", "Unit"],
  reason: "No practice has so many, and what is computed from such a number is wrong in its last digits.",
  run(node, context) {
    for (const [property, most] of Object.entries(NUMBERS[node.$type] ?? {})) {
      checkNumber(node, property, most, context);
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

function checkNumber(node: AstNode, property: string, most: number, { report }: CheckContext): void {
  const value: unknown = node[property as keyof AstNode];
  if (typeof value !== "number" || value <= most) return;
  const cst = cstOf(node, property);
  if (cst === undefined) return;
  report({ message: "This number is too large to be meant. Write a smaller one.", node, cst });
}
