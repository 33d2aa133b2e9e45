import { AstUtils } from "langium";
import { type Drill, isBlock, isOnTarget, isSuccess, isTarget } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { mayState } from "./practice.ts";
import { code, quoted } from "./wording.ts";

/** `on target` in a block without a target. */
export const check = defineCheck({
  on: ["OnTarget", "Block"],
  reason:
    "A shot is on target when it meets the targets of its block; without one nobody can say which shots are.",
  run(node, context) {
    const block = isBlock(node) ? node : AstUtils.getContainerOfType(node, isBlock);
    const drill = block?.use?.drill?.ref;
    if (block === undefined || mayState(block, isTarget, context)) return;
    const example = code("target start-direction within ±2°");
    if (!isBlock(node)) {
      context.report({
        message: `This block has no target. Say what a shot aims at, such as ${example}, or write here what counts: ${code("with start-direction within ±2°")}.`,
        node,
      });
    } else if (drill !== undefined && asksForTarget(drill) && !block.statements.some(isSuccess)) {
      context.report({
        message: `${quoted(drill.name)} counts shots on target, and leaves the target to its block. Say what a shot aims at, such as ${example}.`,
        node,
        property: "name",
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    success at least 7 of 10 shots «on target»
  }
  block «"Again"» from "Line"
}

drill "Line" {
  10 shots
  success 3 in a row on target
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 7 of 10 shots on target
  }
  block "Again" from "Line" {
    target start-direction within ±3°
  }
}

drill "Line" {
  10 shots
  success 3 in a row on target
}`,
});

function asksForTarget(drill: Drill): boolean {
  return drill.statements.filter(isSuccess).some((success) => AstUtils.streamAst(success).some(isOnTarget));
}
