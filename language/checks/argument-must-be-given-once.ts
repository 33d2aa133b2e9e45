import type { Parameter } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A parameter that is given two arguments. */
export const check = defineCheck({
  on: ["DrillUse"],
  reason: "Two values for one parameter leave open which of them holds.",
  run(use, { report }) {
    const given = new Set<Parameter>();
    for (const argument of use.arguments) {
      const parameter = argument.parameter?.ref;
      if (parameter === undefined) continue;
      if (given.has(parameter)) {
        report({
          message: `${code(parameter.name)} has its value already. Keep one of the two.`,
          node: argument,
        });
      }
      given.add(parameter);
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
