import { isBlock } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A plan without blocks. */
export const check = defineCheck({
  on: ["Plan"],
  reason: "A plan is practised and scored block by block.",
  run(plan, { report }) {
    if (plan.statements.some(isBlock)) return;
    report({
      message: `This plan has nothing to practise yet. Add a ${code("block")} with its shots.`,
      node: plan,
      property: "name",
    });
  },
  reporting: `
plan «"Gate"» {
  intent "Start on line."
}`,
  silent: `
plan "Gate" {
  intent "Start on line."
  block "Start" {
    10 shots
  }
}`,
});
