import { AstUtils } from "langium";
import { isFinding, isOnTarget } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A finding that asks a baseline for what it does not have. */
export const check = defineCheck({
  on: ["OnTarget", "AgainstBaseline", "AgainstBlock"],
  reason: "A baseline has no targets and nothing before it: a finding looks at its shots alone.",
  run(node, { report }) {
    if (AstUtils.getContainerOfType(node, isFinding) === undefined) return;
    const what = isOnTarget(node)
      ? `A baseline has no target. Write what the shots are like: ${code("with club-path at least 3° out-to-in")}.`
      : `A finding is looked for in the baseline itself. Write ${code("against usual")}, or an amount of its own.`;
    report({ message: what, node });
  },
  reporting: `
finding "Cut" {
  when at least 60 % of shots «on target»
  when carry loses at least 5 m against «the baseline»
  suspect "open shoulders"
}`,
  silent: `
finding "Cut" {
  when at least 60 % of shots with club-path at least 3° out-to-in
  when carry loses at least 5 m against usual
  suspect "open shoulders"
}`,
});
