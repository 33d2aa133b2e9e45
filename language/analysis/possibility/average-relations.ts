/** What relations between readings say of averages over the same shots. */
import type { Expression, Hand } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import type { Relation } from "../reasoning/relation.ts";
import { rangeInWords } from "../words.ts";
import type { Vocabulary } from "./vocabulary.ts";

/**
 * A linear relation holds of averages as it does of readings. Of `product = factor · other`, where no other is below zero,
 * each shot keeps within the ends of the factor times the other, and so do the averages.
 *
 * @param domain where readings lie that enter the averages: SI, target frame
 */
export function relationsOfAverages(
  relation: Relation,
  domain: (metric: string) => Interval,
  vocabulary: Vocabulary,
  hand: Hand,
): Relation[] {
  if (isLinear(relation.expression)) return [relation];
  return productsIn(relation.expression).flatMap(({ product, factor, other }) => {
    const { low, high } = domain(factor);
    const rest = domain(other);
    if (rest.low < 0 || !Number.isFinite(rest.high)) return [];
    const slack = relation.slack * rest.high;
    const bounded = (end: number, side: Interval, ends: Interval): Relation[] => {
      const metric = vocabulary.metrics.get(factor);
      if (!Number.isFinite(end) || metric === undefined) return [];
      const words = rangeInWords(side, metric, { hand, unit: metric.unit, isPlain: false });
      return [
        {
          expression: minus(metricCalled(product), times(end, other)),
          range: ends,
          slack,
          says: `${relation.says}, with ${factor} ${words}`,
          metrics: [product, other],
        },
      ];
    };
    return [
      ...bounded(high, { low: Number.NEGATIVE_INFINITY, high }, { low: Number.NEGATIVE_INFINITY, high: 0 }),
      ...bounded(low, { low, high: Number.POSITIVE_INFINITY }, { low: 0, high: Number.POSITIVE_INFINITY }),
    ];
  });
}

interface Product {
  readonly product: string;
  readonly factor: string;
  readonly other: string;
}

/** The products that a formula `one / other` or `one * other` of a metric makes: `(formula) − metric`. */
export function productsIn(expression: Expression): Product[] {
  if (expression.kind !== "operation" || expression.operator !== "-") return [];
  const { left: formula, right: metric } = expression;
  if (formula.kind !== "operation" || metric.kind !== "metric") return [];
  const { operator, left, right } = formula;
  if (left.kind !== "metric" || right.kind !== "metric") return [];
  const of = (product: string, one: string, other: string) => [
    { product, factor: one, other },
    { product, factor: other, other: one },
  ];
  if (operator === "/") return of(left.name, metric.name, right.name);
  return operator === "*" ? of(metric.name, left.name, right.name) : [];
}

function metricCalled(name: string): Expression {
  return { kind: "metric", name };
}

function times(value: number, metric: string): Expression {
  return { kind: "operation", operator: "*", left: { kind: "number", value }, right: metricCalled(metric) };
}

function minus(left: Expression, right: Expression): Expression {
  return { kind: "operation", operator: "-", left, right };
}

/** Whether an average of its value is its value at the averages. */
export function isLinear(expression: Expression): boolean {
  if (expression.kind !== "operation") return true;
  const { operator, left, right } = expression;
  if (!isLinear(left) || !isLinear(right)) return false;
  if (operator === "+" || operator === "-") return true;
  return isConstant(right) || (operator === "*" && isConstant(left));
}

function isConstant(expression: Expression): boolean {
  if (expression.kind === "operation") return isConstant(expression.left) && isConstant(expression.right);
  return expression.kind === "number";
}
