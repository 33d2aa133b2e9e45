/** Metrics, formulas and clubs: from the tree to the model. */
import { signed } from "../../shared/interval.ts";
import type {
  Club as ClubModel,
  Expression as ExpressionModel,
  Metric as MetricModel,
} from "../../shared/plan-model.ts";
import {
  type CategoryRule,
  type Club,
  type Expression,
  isBinaryExpression,
  isCategoryRule,
  isEstimated,
  isFormula,
  isMetricOperand,
  isPlausible,
  type Metric,
} from "../generated/tree/ast.ts";
import { directionModel, directionsOf } from "../types/directions.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { shownIn } from "../types/units.ts";
import { lowerCondition, lowerQuantity } from "./amounts.ts";
import { resolved } from "./unresolved.ts";

export function lowerMetric(metric: Metric): MetricModel {
  const plausible = metric.statements.find(isPlausible);
  const formula = metric.statements.find(isFormula);
  const limits =
    plausible &&
    [plausible.low, plausible.high].map((limit) => signed(lowerQuantity(limit, NO_BINDINGS), "right"));
  const rules = metric.statements.filter(isCategoryRule);
  return {
    name: metric.name,
    dimension: metric.dimension === undefined ? "" : resolved(metric.dimension).name,
    ...shownIn(metric),
    directions: directionsOf(metric).map(directionModel),
    plausible: limits ? { low: Math.min(...limits), high: Math.max(...limits) } : null,
    formula: formula ? lowerExpression(formula.expression) : null,
    categories: inOrder(metric, rules),
    model: metric.statements.some(isEstimated) ? "flight" : null,
  };
}

/** The names with a rule in the order of their rules, then the others. A name with several rules stands once for each. */
function inOrder({ categories }: Metric, rules: readonly CategoryRule[]): MetricModel["categories"] {
  const ruled = rules.map(({ category, condition }) => ({
    name: resolved(category).name,
    condition: lowerCondition(condition, NO_BINDINGS),
  }));
  const others = categories.filter(({ name }) => !ruled.some((rule) => rule.name === name));
  return [...ruled, ...others.map(({ name }) => ({ name, condition: null }))];
}

export function lowerExpression(expression: Expression): ExpressionModel {
  if (isBinaryExpression(expression)) {
    const { operator, left, right } = expression;
    return { kind: "operation", operator, left: lowerExpression(left), right: lowerExpression(right) };
  }
  if (isMetricOperand(expression)) return { kind: "metric", name: resolved(expression.metric).name };
  return { kind: "number", value: signed(lowerQuantity(expression.quantity, NO_BINDINGS), "right") };
}

export function lowerClub(club: Club): ClubModel {
  return { name: club.name, spellings: [...club.spellings] };
}
