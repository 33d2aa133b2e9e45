import { AstUtils } from "langium";
import { isWindowTest } from "../generated/tree/ast.ts";
import { circleOver } from "../types/cycles.ts";
import { windowsNamedIn } from "../types/windows.ts";
import { defineCheck } from "./check.ts";
import { quoted } from "./wording.ts";

/** A window whose condition leads back to it. */
export const check = defineCheck({
  on: ["Window"],
  reason: "Whether a shot is inside would depend on whether it is inside.",
  run(window, { report }) {
    for (const test of AstUtils.streamAst(window).filter(isWindowTest)) {
      const other = test.window?.ref;
      if (other === undefined || circleOver(window, other, windowsNamedIn) === undefined) continue;
      report({
        message: `${quoted(window.name)} is made of itself here. Write what a shot inside it must be.`,
        node: test,
        property: "window",
      });
    }
  },
  reporting: `
window "A" is inside «"B"»
window "B" is carry at least 100 m and inside «"A"»`,
  silent: `
window "A" is inside "B" or carry at least 120 m
window "B" is carry at least 100 m`,
});
