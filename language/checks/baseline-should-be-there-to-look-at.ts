import { AstUtils } from "langium";
import { isBlock, isPlan } from "../generated/tree/ast.ts";
import { isBaseline } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** Findings that are looked for where nothing can be found. */
export const check = defineCheck({
  on: ["LooksFor"],
  reason: "Findings are looked for in the shots of a baseline.",
  run(line, { report }) {
    const blocks = AstUtils.getContainerOfType(line, isPlan)?.statements.filter(isBlock) ?? [];
    if (blocks.some(isBaseline)) return;
    report({
      message: `This plan has no baseline to look at. Add a block of the kind ${code("baseline")}.`,
      node: line,
    });
  },
  reporting: `
finding "Cut" {
  when average club-path at least 3° out-to-in
  suspect "open shoulders"
}

plan "Gate" {
  «look for "Cut"»
  block "Start" {
    10 shots
  }
}`,
  silent: `
finding "Cut" {
  when average club-path at least 3° out-to-in
  suspect "open shoulders"
}

plan "Gate" {
  look for "Cut"
  block "Start" baseline {
    10 shots
  }
}`,
});
