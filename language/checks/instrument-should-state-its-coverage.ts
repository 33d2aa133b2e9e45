import { isCoverage, isUncertainty } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { insertStatement } from "./edits.ts";
import { code } from "./wording.ts";

/** Figures of an instrument that do not say what they mean. */
export const check = defineCheck({
  on: ["Instrument"],
  reason:
    "A figure of ±1° can mean that two readings of three are that near, or nineteen of twenty, or all. Without a coverage the figures are taken as standard uncertainties.",
  run(instrument, { document, report }) {
    const { statements } = instrument;
    if (!statements.some(isUncertainty) || statements.some(isCoverage)) return;
    const edit = insertStatement(document, instrument, "coverage 95 %");
    report({
      message: `What do these figures cover? Write ${code("coverage 95 %")}, ${code("coverage factor 2")} or ${code("coverage limits")}, as its maker states it.`,
      node: instrument,
      property: "name",
      fixes: edit === undefined ? [] : [{ title: "Write coverage 95 %", edits: [edit] }],
    });
  },
  reporting: `
instrument «"Bay"» {
  reads carry within 2 m random
}`,
  fixed: `
instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random
}`,
  silent: `
instrument "Bay" {
  coverage factor 2
  reads carry within 2 m random
}`,
});
