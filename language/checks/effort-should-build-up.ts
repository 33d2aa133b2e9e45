import { isShots } from "../generated/tree/ast.ts";
import { numberOf } from "../types/parameters.ts";
import { defineCheck } from "./check.ts";
import { cstOf, insertAfter, rangeOf, replace } from "./edits.ts";
import { kindOf, statedIn } from "./practice.ts";

/** The most that a first swing should be, in percent of a full one. */
const EASY = 80;

/** A warm-up that begins with full swings. */
export const check = defineCheck({
  on: ["Block"],
  isAboutPractice: true,
  reason: "A warm-up builds up: easy swings first, and full ones when the body is ready for them.",
  run(block, { report }) {
    if (kindOf(block) !== "warm-up") return;
    const [first] = statedIn(block, isShots);
    if (first === undefined || first.$container !== block) return;
    const effort = first.effort === undefined ? 100 : numberOf(first.effort);
    if (effort === undefined || effort <= EASY) return;
    const stated = cstOf(first, "effort");
    report({
      message: "This warm-up begins with full swings. Begin with little effort, such as 50 %.",
      node: first,
      fixes: [
        {
          title: "Begin at 50 % effort",
          edits: [
            stated === undefined
              ? insertAfter(rangeOf(first), " at 50 % effort")
              : replace(stated.range, "50"),
          ],
        },
      ],
    });
  },
  reporting: `
plan "Gate" {
  block "Wake up" warm-up {
    «8 shots»
  }
}`,
  fixed: `
plan "Gate" {
  block "Wake up" warm-up {
    8 shots at 50 % effort
  }
}`,
  silent: `
plan "Gate" {
  block "Wake up" warm-up {
    8 shots at 60 % effort
    4 shots
  }
}`,
});
