import { defineCheck } from "./check.ts";
import { repeated } from "./repeated.ts";
import { code } from "./wording.ts";

/** A parameter that is given two arguments. */
export const check = defineCheck({
  on: ["DrillUse"],
  reason: "Two values for one parameter leave open which of them holds.",
  run(use, { report }) {
    for (const { thing } of repeated(use.arguments, ({ parameter }) => parameter?.ref)) {
      report({
        message: `${code(thing.parameter.$refText)} has its value already. Keep one of the two.`,
        node: thing,
      });
    }
  },
  reporting: `
drill "Gate" (width: angle = 3°) {
  10 shots
  target start-direction within ±width
}

plan "Gate" {
  block "Start" from "Gate" with width = 2°, «width = 3°»
}`,
  silent: `
drill "Gate" (width: angle = 3°) {
  10 shots
  target start-direction within ±width
}

plan "Gate" {
  block "Start" from "Gate" with width = 2°
}`,
});
