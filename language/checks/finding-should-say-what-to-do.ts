import { isCheckFor, isSuspect, isTryDrill } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A finding that leads nowhere. */
export const check = defineCheck({
  on: ["Finding"],
  reason: "A pattern helps when it says where to look or what to try.",
  run(finding, { report }) {
    const { statements } = finding;
    if (statements.some((line) => isSuspect(line) || isCheckFor(line) || isTryDrill(line))) return;
    report({
      message: `What may this come from, and what then? Add ${code('suspect "…"')}, ${code('check "…"')} or ${code('try "…"')} with a drill.`,
      node: finding,
      property: "name",
    });
  },
  reporting: `
finding «"Cut from an open face"» {
  when average face-to-path at least 2° open
}`,
  silent: `
finding "Cut from an open face" {
  when average face-to-path at least 2° open
  check "Where the lead thumb sits"
}`,
});
