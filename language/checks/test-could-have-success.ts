import { isSuccess } from "../generated/tree/ast.ts";
import { isTest, kindOf } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { mayState } from "./practice.ts";
import { code } from "./wording.ts";

/** A test that cannot be passed or failed. */
export const check = defineCheck({
  on: ["Block"],
  reason: "A test answers a question, and what the answer is depends on what counts as a success.",
  run(block, context) {
    const kind = kindOf(block);
    if (!isTest(block) || mayState(block, isSuccess, context)) return;
    context.report({
      message: `When is this ${kind === "test" ? "test" : `${kind} test`} passed? Say so with ${code("success")}, such as ${code("success at least 70 % of shots on target")}.`,
      node: block,
      property: block.kind === undefined ? "use" : "kind",
    });
  },
  reporting: `
plan "Gate" {
  block "Start" «test» {
    10 shots
  }
  block "Again" from «"Line"»
}

drill "Line" retention {
  10 shots
  target start-direction within ±2°
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 70 % of shots on target
  }
  block "Again" from "Line" retention
}

drill "Line" {
  10 shots
  target start-direction within ±2°
  success at least 70 % of shots on target
}`,
});
