import { isSuccess } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

const TESTS: readonly (string | undefined)[] = ["test", "retention", "transfer"];

/** A test that cannot be passed or failed. */
export const check = defineCheck({
  on: ["Block"],
  reason: "A test answers a question, and what the answer is depends on what counts as a success.",
  run(block, { report }) {
    if (!TESTS.includes(block.kind) || block.statements.some(isSuccess)) return;
    report({
      message: `When is this ${block.kind === "test" ? "test" : `${block.kind} test`} passed? Say so with ${code("success")}, such as ${code("success at least 70 % of shots on target")}.`,
      node: block,
      property: "kind",
    });
  },
  reporting: `
plan "Gate" {
  block "Start" «test» {
    10 shots
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 70 % of shots on target
  }
}`,
});
