import type { Dimension, Quantity } from "../generated/tree/ast.ts";
import { dimensionOfUnit, worthOf } from "../types/units.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A range that starts where it ends. */
export const check = defineCheck({
  on: ["Between", "Plausible"],
  reason: "Hardly any reading is exactly one number, so a range from an amount to itself leaves nothing.",
  run(range, { report }) {
    if (!areSame(range.low, range.high)) return;
    const text = range.low.$cstNode?.text ?? "";
    report({
      message: `Both ends are ${code(text)}, so only readings of exactly that would do. Give the range some room.`,
      node: range,
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target carry «between 150 yd and 150 yd»
  }
}

metric lean is angle {
  positive forward
  negative backward
  «plausible between 5° forward and 5° forward»
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target carry between 150 yd and 160 yd and club-path between 2° left and 2° right
  }
}`,
});

/** The same amount in the same direction, whatever the units; zero has none. */
function areSame(one: Quantity, other: Quantity): boolean {
  const size = worthOf(one);
  if (size === undefined || size !== worthOf(other)) return false;
  if (dimensionOf(one) !== dimensionOf(other)) return false;
  return size === 0 || one.direction?.$refText === other.direction?.$refText;
}

function dimensionOf({ unit }: Quantity): Dimension | undefined {
  return unit?.ref && dimensionOfUnit(unit.ref);
}
