import { type AstNode, AstUtils } from "langium";
import { isCount, isQuantity, isShots } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A parameter that the drill does not use. */
export const check = defineCheck({
  on: ["Drill"],
  reason: "Whoever gives a value to a parameter expects it to change something.",
  run(drill, { isBroken, report }) {
    if (isBroken(drill) || drill.parameters.length === 0) return;
    const used = new Set<string>();
    for (const statement of drill.statements) {
      for (const node of AstUtils.streamAst(statement)) {
        const name = nameIn(node);
        if (name !== undefined) used.add(name);
      }
    }
    for (const parameter of drill.parameters) {
      if (used.has(parameter.name)) continue;
      report({
        message: `Nothing in the drill depends on ${code(parameter.name)}. Use it, or take it out.`,
        node: parameter,
        property: "name",
        unnecessary: true,
      });
    }
  },
  reporting: `
drill "Gate" (width: angle = 2°, «hits»: ratio = 7) {
  10 shots
  target start-direction within ±width
}

plan "Gate" {
  block "Start" from "Gate"
}`,
  silent: `
drill "Gate" (width: angle = 2°, hits: ratio = 7) {
  10 shots
  target start-direction within ±width
  success at least hits of 10 shots on target
}

plan "Gate" {
  block "Start" from "Gate"
}`,
});

/** The name at a place where a parameter can be named. */
function nameIn(node: AstNode): string | undefined {
  if (isQuantity(node) || isCount(node)) return node.parameter?.$refText;
  return isShots(node) ? node.club?.$refText : undefined;
}
