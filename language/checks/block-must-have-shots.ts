import { isShots } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { mayState } from "./practice.ts";
import { code } from "./wording.ts";

/** A block that does not say how many shots are hit. */
export const check = defineCheck({
  on: ["Block"],
  reason:
    "Without a number of shots nobody knows when the block is over, and a session cannot be told apart into blocks.",
  run(block, context) {
    if (mayState(block, isShots, context)) return;
    context.report({
      message: `How many shots has this block? Write for example ${code("10 shots")} or ${code("at least 10 shots with 7-iron")}.`,
      node: block,
      property: "name",
    });
  },
  reporting: `
plan "Gate" {
  block «"Start"» {
    cue "Brush the grass"
  }
  block «"Again"» from "Line"
}

drill "Line" {
  cue "Brush the grass"
}`,
  silent: `
plan "Gate" {
  block "Start" {
    at least 10 shots
    cue "Brush the grass"
  }
  block "Again" from "Line"
}

drill "Line" {
  10 shots
}`,
});
