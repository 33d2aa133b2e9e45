import { AstUtils } from "langium";
import { isFormula, isMetric, isMetricOperand, type Metric } from "../generated/tree/ast.ts";
import { circles } from "../types/cycles.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { code } from "./wording.ts";

/** A formula that needs the metric it computes. */
export const check = defineCheck({
  on: ["Document"],
  reason: "A metric that is needed for its own formula can never be computed.",
  run(root, { document, isBroken, report }) {
    const metrics = root.declarations.filter(isMetric).filter((metric) => formulaOf(metric) !== undefined);
    for (const [metric, circle] of circles(metrics, metricsIn)) {
      const formula = formulaOf(metric);
      if (formula === undefined || AstUtils.getDocument(metric) !== document || isBroken(metric)) continue;
      const others = circle.slice(1).map(({ name }) => code(name));
      const way = others.length === 0 ? "directly" : `by way of ${others.join(", ")}`;
      report({
        message: `${code(metric.name)} needs itself, ${way}, so it can never be computed. Take one of the formulas out.`,
        node: formula,
        fixes: [{ title: "Take the formula out", edits: [remove(document, rangeOf(formula))] }],
      });
    }
  },
  reporting: `
metric reach is length {
  «formula reach * 2»
}

metric mine is length {
  formula (carry + roll) / 2
}`,
  fixed: `
metric reach is length {
}

metric mine is length {
  formula (carry + roll) / 2
}`,
  silent: `
metric twice is length {
  formula half * 4
}

metric half is length {
  formula carry / 2
}`,
});

function formulaOf(metric: Metric) {
  return metric.statements.find(isFormula);
}

function metricsIn(metric: Metric): Metric[] {
  const expression = formulaOf(metric)?.expression;
  if (expression === undefined) return [];
  return AstUtils.streamAst(expression)
    .filter(isMetricOperand)
    .map((operand) => operand.metric?.ref)
    .filter((used) => used !== undefined)
    .toArray();
}
