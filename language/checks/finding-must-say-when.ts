import { isWhen } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A finding that nothing shows. */
export const check = defineCheck({
  on: ["Finding"],
  reason: "A pattern is what is seen in the shots. Without it nobody can look for the finding.",
  run(finding, { report }) {
    if (finding.statements.some(isWhen)) return;
    report({
      message: `What is seen when this is there? Write for example ${code("when average club-path at least 3° out-to-in")}.`,
      node: finding,
      property: "name",
    });
  },
  reporting: `
finding «"Cut"» {
  suspect "open shoulders"
}`,
  silent: `
finding "Cut" {
  when average club-path at least 3° out-to-in
  suspect "open shoulders"
}`,
});
