import { defineCheck } from "./check.ts";
import { repeated } from "./repeated.ts";
import { code } from "./wording.ts";

/** Two parameters of one name. */
export const check = defineCheck({
  on: ["Drill"],
  reason: "A name that stands for two parameters does not say which of them is meant.",
  run({ parameters }, { report }) {
    for (const { thing } of repeated(parameters, ({ name }) => name)) {
      report({
        message: `The drill has a parameter ${code(thing.name)} already. Give this one another name, or take it out.`,
        node: thing,
        property: "name",
      });
    }
  },
  reporting: `
drill "Gate" (width: angle = 2°, «width»: angle = 3°) {
  10 shots
  target start-direction within ±width and face-angle within ±3°
}

plan "Gate" {
  block "Start" from "Gate"
}`,
  silent: `
drill "Gate" (width: angle = 2°, tilt: angle = 3°) {
  10 shots
  target start-direction within ±width and face-angle within ±tilt
}

plan "Gate" {
  block "Start" from "Gate"
}`,
});
