import { AstUtils } from "langium";
import {
  type CategoryRule,
  type Formula,
  isCategoryRule,
  isCategoryTest,
  isFormula,
  isMetric,
  isMetricOperand,
  isNumberTest,
  type Metric,
} from "../generated/tree/ast.ts";
import { circles } from "../types/cycles.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { code } from "./wording.ts";

/** A formula that needs the metric it computes. */
export const check = defineCheck({
  on: ["Document"],
  reason: "A metric that is needed for its own formula can never be computed.",
  run(root, { document, isBroken, report }) {
    const metrics = root.declarations.filter(isMetric).filter((metric) => waysTo(metric).length > 0);
    for (const [metric, circle] of circles(metrics, metricsIn)) {
      if (AstUtils.getDocument(metric) !== document || isBroken(metric)) continue;
      const next = circle[1] ?? metric;
      const node = waysTo(metric).find((way) => namedIn(way).includes(next));
      if (node === undefined) continue;
      const others = circle.slice(1).map(({ name }) => code(name));
      const way = others.length === 0 ? "directly" : `by way of ${others.join(", ")}`;
      const what = isFormula(node) ? "formula" : "line";
      report({
        message: `${code(metric.name)} needs itself, ${way}, so it can never be computed. Take ${others.length === 0 ? `the ${what}` : "one of the formulas"} out.`,
        node,
        fixes: [{ title: `Take the ${what} out`, edits: [remove(document, rangeOf(node))] }],
      });
    }
  },
  reporting: `
metric reach is length {
  «formula reach * 2»
}

metric mine is length {
  formula (carry + roll) / 2
}

metric miss is one of long, wild {
  long where carry at least 160 yd
  «wild where miss is long and offline at least 20 yd right»
}`,
  fixed: `
metric reach is length {
}

metric mine is length {
  formula (carry + roll) / 2
}

metric miss is one of long, wild {
  long where carry at least 160 yd
}`,
  silent: `
metric twice is length {
  formula half * 4
}

metric half is length {
  formula carry / 2
}`,
});

/** The statements by which a metric is computed from others. */
function waysTo(metric: Metric): (Formula | CategoryRule)[] {
  return metric.statements.filter((statement) => isFormula(statement) || isCategoryRule(statement));
}

function metricsIn(metric: Metric): Metric[] {
  return waysTo(metric).flatMap(namedIn);
}

function namedIn(way: Formula | CategoryRule): Metric[] {
  return AstUtils.streamAst(way)
    .filter((node) => isMetricOperand(node) || isNumberTest(node) || isCategoryTest(node))
    .flatMap(({ metric }) => metric?.ref ?? [])
    .toArray();
}
