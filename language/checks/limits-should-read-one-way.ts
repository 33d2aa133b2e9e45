import { isAbove, isHandedDirection, isNegative } from "../generated/tree/ast.ts";
import { roleOf } from "../types/amounts.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, replace } from "./edits.ts";
import { amount, code } from "./wording.ts";

/** `above` or `below` an amount to the negative side of a scale that is the same for all: down, left, behind. */
export const check = defineCheck({
  on: ["Above", "Below"],
  reason:
    "Up is above down: some read `above 1° down` as less than 1° down, though it means more. A goal that two people read in two ways is no goal.",
  run(range, { report }) {
    const { limit } = range;
    const side = limit.direction?.ref;
    if (limit.value === undefined) return;
    const number = amount(limit.value, limit.unit?.$refText ?? "");
    // A word that mirrors with the hand is no side of a scale: more than 15 yd of draw is that and nothing else.
    if (side === undefined || isHandedDirection(side) || !isNegative(side.$container)) return;
    if (roleOf(limit) !== "place") return;
    const written = `${isAbove(range) ? "above" : "below"} ${number} ${side.name}`;
    const more = `at least ${number} ${side.name}`;
    const less = `at most ${number} ${side.name}`;
    const [meant, other] = isAbove(range) ? [more, less] : [less, more];
    const meaning = isAbove(range)
      ? `more ${side.name} than ${number}`
      : `less ${side.name} than ${number}, or the other side`;
    report({
      message: `${code(written)} means ${meaning}, but can be read the other way round. Write ${code(meant)}, or ${code(other)} if that was meant; to state both ends, write ${code(`between ${number} ${side.name} and …`)}.`,
      node: range,
      fixes: [meant, other].map((text) => ({
        title: `Write ${text}`,
        edits: [replace(rangeOf(range), text)],
      })),
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target attack-angle «above 1° down»
    require low-point «below 1 in behind»
    success average offline «above 10 yd left»
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
    target attack-angle at least 1° down
    require low-point at most 1 in behind
    success average offline at least 10 yd left
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target attack-angle above 1° up and spin-rate below 3000 rpm
    require club-path below 2.5° in-to-out and curve above 3 yd draw
    success average offline between 10 yd left and 20 yd left
  }
}`,
});
