/** Metrics, formulas and clubs: from the tree to the model. */
import { signed } from "../../shared/interval.ts";
import type {
  Club as ClubModel,
  Expression as ExpressionModel,
  Metric as MetricModel,
} from "../../shared/plan-model.ts";
import {
  type Club,
  type Expression,
  isBinaryExpression,
  isFormula,
  isMetricOperand,
  isPlausible,
  type Metric,
} from "../generated/tree/ast.ts";
import { directionModel, directionsOf } from "../types/directions.ts";
import { shownIn } from "../types/units.ts";
import { lowerQuantity } from "./amounts.ts";
import { resolved } from "./unresolved.ts";

export function lowerMetric(metric: Metric): MetricModel {
  const plausible = metric.statements.find(isPlausible);
  const formula = metric.statements.find(isFormula);
  const limits =
    plausible && [plausible.low, plausible.high].map((limit) => signed(lowerQuantity(limit), "right"));
  return {
    name: metric.name,
    dimension: resolved(metric.dimension).name,
    ...shownIn(metric),
    directions: directionsOf(metric).map(directionModel),
    plausible: limits ? { low: Math.min(...limits), high: Math.max(...limits) } : null,
    formula: formula ? lowerExpression(formula.expression) : null,
  };
}

export function lowerExpression(expression: Expression): ExpressionModel {
  if (isBinaryExpression(expression)) {
    const { operator, left, right } = expression;
    return { kind: "operation", operator, left: lowerExpression(left), right: lowerExpression(right) };
  }
  if (isMetricOperand(expression)) return { kind: "metric", name: resolved(expression.metric).name };
  return { kind: "number", value: signed(lowerQuantity(expression.quantity), "right") };
}

export function lowerClub(club: Club): ClubModel {
  return { name: club.name, spellings: [...club.spellings] };
}
