import { isWithin } from "../generated/tree/ast.ts";
import { roleOf } from "../types/amounts.ts";
import { defineCheck } from "./check.ts";
import { cstOf, removeWords } from "./edits.ts";
import { code } from "./wording.ts";

/** A direction word on a tolerance or a spread. */
export const check = defineCheck({
  on: ["Quantity"],
  reason: "A tolerance goes both ways and a spread goes none: a direction on it is a slip for a place.",
  run(quantity, { document, report }) {
    const direction = quantity.direction?.ref;
    if (direction === undefined || roleOf(quantity) !== "width") return;
    const cst = cstOf(quantity, "direction");
    if (cst === undefined) return;
    const isTolerance = isWithin(quantity.$container) && quantity.$container.tolerance === quantity;
    const what = isTolerance ? "A tolerance goes both ways" : "A spread has no side";
    report({
      message: `${what}, so ${code(direction.name)} says nothing here. Take it out.`,
      node: quantity,
      cst,
      fixes: [{ title: `Take ${direction.name} out`, edits: [removeWords(document, cst.range)] }],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path within 2° «in-to-out» of 1° in-to-out
    success spread of club-path at most 2° «right»
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path within 2° of 1° in-to-out
    success spread of club-path at most 2°
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path within 2° of 1° in-to-out
    success average club-path at most 2° right
  }
}`,
});
