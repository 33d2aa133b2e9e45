import { AstUtils } from "langium";
import { isBlock, isTarget } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** `on target` in a block without a target. */
export const check = defineCheck({
  on: ["OnTarget"],
  reason:
    "A shot is on target when it meets the targets of its block; without one nobody can say which shots are.",
  run(subject, { report }) {
    const block = AstUtils.getContainerOfType(subject, isBlock);
    if (block === undefined || block.statements.some(isTarget)) return;
    // A drill that is not known yet may well have one.
    if (block.use !== undefined && (block.use.drill?.ref?.statements.some(isTarget) ?? true)) return;
    report({
      message: `This block has no target. Say what a shot aims at, such as ${code("target start-direction within ±2°")}, or write here what counts: ${code("with start-direction within ±2°")}.`,
      node: subject,
    });
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    success at least 7 of 10 shots «on target»
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 7 of 10 shots on target
  }
}`,
});
