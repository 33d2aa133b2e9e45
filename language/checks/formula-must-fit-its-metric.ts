import { describeVector, inferDimension, sameDimension, vectorOf } from "../types/dimensions.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A formula that gives another kind of quantity than its metric is. */
export const check = defineCheck({
  on: ["Formula"],
  reason: "What a formula gives is shown and compared as what its metric is declared to be.",
  run(formula, { report }) {
    const metric = formula.$container;
    const dimension = metric.dimension?.ref;
    const given = formula.expression && inferDimension(formula.expression);
    if (dimension === undefined || given === undefined || sameDimension(given, vectorOf(dimension))) return;
    report({
      message: `This formula gives ${describeVector(given)}, but ${code(metric.name)} is declared as ${code(dimension.name)}. Change one of the two.`,
      node: formula,
      property: "expression",
    });
  },
  reporting: `
metric pace is length {
  formula «carry / flight-time»
}`,
  silent: `
metric pace is speed {
  formula carry / flight-time
}`,
});
