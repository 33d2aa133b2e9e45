import {
  isEllipseCriterion,
  isMovement,
  isUncertaintyPart,
  isWithin,
  type Quantity,
} from "../generated/tree/ast.ts";
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
    report({
      message: `${whatIsWide(quantity)}, so ${code(direction.name)} says nothing here. Take it out.`,
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
    success {
      spread of club-path at most 2° «right»
      middle 80 % of offline spans at most 12 yd «left»
      area of the 80 % ellipse of offline and low-point at most 30 yd²
      spread of offline falls by at least 2 yd «left» against usual
    }
  }
}

player "P-1" {
  right-handed
  usual offline 2 yd left spread 6 yd «right»
}

instrument "Bay" {
  coverage 95 %
  reads club-path within 1° «right» random
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path within 2° of 1° in-to-out
    success {
      spread of club-path at most 2°
      middle 80 % of offline spans at most 12 yd
      area of the 80 % ellipse of offline and low-point at most 30 yd²
      spread of offline falls by at least 2 yd against usual
    }
  }
}

player "P-1" {
  right-handed
  usual offline 2 yd left spread 6 yd
}

instrument "Bay" {
  coverage 95 %
  reads club-path within 1° random
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

function whatIsWide(quantity: Quantity): string {
  const around = quantity.$container;
  if (isWithin(around) && around.tolerance === quantity) return "A tolerance goes both ways";
  if (isUncertaintyPart(around)) return "Readings may be off either way";
  if (isMovement(around)) return "How much it changes has no side";
  return isEllipseCriterion(around.$container) ? "A size has no side" : "A spread has no side";
}
