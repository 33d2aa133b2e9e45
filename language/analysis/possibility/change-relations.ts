/** What formulas say of changes of averages: what holds of the numbers before and of those now holds of their difference. */
import type { Against, ChangeCriterion, Criterion, Expression } from "../../../shared/plan-model.ts";
import type { Relation } from "../reasoning/relation.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** The name of the number that a change is about; a share of what there was is another than an amount. */
export function nameOfChange({ statistic, metric, against, movement }: ChangeCriterion): string {
  return nameOf(metric, statistic, against, isShare({ movement }));
}

function isShare({ movement }: Pick<ChangeCriterion, "movement">): boolean {
  return movement.amount.unit.symbol === "%";
}

function nameOf(
  metric: string,
  statistic: ChangeCriterion["statistic"],
  against: Against,
  ofShare: boolean,
): string {
  return JSON.stringify(["change", statistic, metric, against, ofShare]);
}

/** Between changes that goals are about. */
export function relationsOfChanges(goals: readonly Criterion[], vocabulary: Vocabulary): Relation[] {
  const changes = goals.filter((goal) => goal.kind === "change");
  return [...sameWay(changes), ...byFormulas(changes.filter(isOfAverages), vocabulary)];
}

/** A number that rises by an amount does not fall by a share. */
function sameWay(changes: readonly ChangeCriterion[]): Relation[] {
  return changes.filter(isShare).map(({ statistic, metric, against }) => {
    const share = nameOf(metric, statistic, against, true);
    const amount = nameOf(metric, statistic, against, false);
    return {
      expression: {
        kind: "operation",
        operator: "*",
        left: { kind: "metric", name: share },
        right: { kind: "metric", name: amount },
      },
      range: { low: 0, high: Number.POSITIVE_INFINITY },
      slack: 0,
      says: "what rises by an amount does not fall by a share",
      metrics: [share, amount],
    };
  });
}

/** Against the same shots; a constant part of a formula does not change. */
function byFormulas(changes: readonly ChangeCriterion[], vocabulary: Vocabulary): Relation[] {
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
function isOfAverages(change: ChangeCriterion): boolean {
  return change.statistic.kind === "average" && !isShare(change) && change.against.kind !== "usual";
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
