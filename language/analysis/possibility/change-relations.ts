/** What formulas say of changes of averages: what holds of the numbers before and of those now holds of their difference. */
import type { Against, ChangeCriterion, Criterion, Expression } from "../../../shared/plan-model.ts";
import type { Relation } from "../reasoning/relation.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** The name of the number that a change is about; a share of what there was is another than an amount. */
export function nameOfChange({ statistic, metric, against, movement }: ChangeCriterion): string {
  return nameOf(metric, statistic, against, movement.amount.unit.symbol === "%");
}

function nameOf(
  metric: string,
  statistic: ChangeCriterion["statistic"],
  against: Against,
  isShare: boolean,
): string {
  return JSON.stringify(["change", statistic, metric, against, isShare]);
}

/** Between changes that goals are about, against the same shots; a constant part of a formula does not change. */
export function relationsOfChanges(goals: readonly Criterion[], vocabulary: Vocabulary): Relation[] {
  const changes = goals.filter((goal) => goal.kind === "change").filter(isOfAverages);
  const metrics = new Set(changes.map(({ metric }) => metric));
  const baselines = new Map(changes.map(({ against }) => [JSON.stringify(against), against]));
  if (metrics.size < 2) return [];
  const equal = vocabulary
    .relationsAround(metrics)
    .filter(({ expression, range }) => range.low === 0 && range.high === 0 && isLinear(expression));
  return [...baselines.values()].flatMap((against) => {
    const rename = (metric: string) => nameOf(metric, { kind: "average" }, against, false);
    return equal.map((relation) => ({
      ...relation,
      expression: changed(relation.expression, rename),
      metrics: relation.metrics.map(rename),
      slack: 2 * relation.slack,
    }));
  });
}

/** Usual numbers are stated one by one, of whatever shots. */
function isOfAverages({ statistic, movement, against }: ChangeCriterion): boolean {
  const isAmount = movement.amount.unit.symbol !== "%";
  return statistic.kind === "average" && isAmount && against.kind !== "usual";
}

/** A sum of metrics, each by itself or times a number, and of numbers. */
function isLinear(expression: Expression): boolean {
  if (expression.kind !== "operation") return true;
  const { operator, left, right } = expression;
  if (operator === "+" || operator === "-") return isLinear(left) && isLinear(right);
  if (operator === "*" && left.kind === "number") return isLinear(right);
  return right.kind === "number" && isLinear(left);
}

function changed(expression: Expression, rename: (metric: string) => string): Expression {
  if (expression.kind === "metric") return { kind: "metric", name: rename(expression.name) };
  if (expression.kind === "number") return { kind: "number", value: 0 };
  const { operator, left, right } = expression;
  const isSum = operator === "+" || operator === "-";
  const part = (side: Expression) => (isSum || side.kind !== "number" ? changed(side, rename) : side);
  return { kind: "operation", operator, left: part(left), right: part(right) };
}
