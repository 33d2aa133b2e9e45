/** What an amount in the text is an amount of. */
import type { AstNode } from "langium";
import {
  isExpression,
  isPlanTime,
  isQuantity,
  isStatisticCriterion,
  isWithin,
  type Metric,
  type MetricColumn,
  type Quantity,
  type ShownIn,
  type UnitName,
} from "../generated/tree/ast.ts";
import { type DimensionVector, isPlainNumber, sameDimension, vectorOf } from "./dimensions.ts";
import { directionsOf, metricAt } from "./directions.ts";
import { dimensionOfUnit, shownIn, TIME, unitSymbols } from "./units.ts";

/**
 * A `place` on the metric's scale has a direction where the metric has sides; a `width` (a tolerance, a spread) has
 * none; `time` is how long a plan takes; an `operand` stands in a formula.
 */
export type AmountRole = "place" | "width" | "time" | "operand";

export function roleOf(quantity: Quantity): AmountRole {
  const range = quantity.$container;
  if (isPlanTime(range)) return "time";
  if (isExpression(range)) return "operand";
  if (isWithin(range) && range.tolerance === quantity) return "width";
  const statistic = range.$container;
  return isStatisticCriterion(statistic) && statistic.statistic === "spread" ? "width" : "place";
}

/** Whether readings of a metric go two ways from zero. */
export function hasSides(metric: Metric): boolean {
  return directionsOf(metric).length > 0;
}

/** What is measured at a place of the text, and in what it is best written. */
export interface Measure {
  /** The metric; undefined for the time a plan takes. */
  readonly metric: Metric | undefined;
  readonly dimension: { readonly name: string; readonly vector: DimensionVector };
  /** The symbol of the unit to write; empty for a plain number. */
  readonly unit: string;
}

const PLAN_TIME: Measure = {
  metric: undefined,
  dimension: { name: TIME, vector: new Map([[TIME, 1]]) },
  unit: "min",
};

/** What is measured here; undefined in a formula, and where the metric, its dimension or a unit of it is not known. */
export function measureAt(node: Quantity | MetricColumn | ShownIn): Measure | undefined {
  const role = isQuantity(node) ? roleOf(node) : "place";
  if (role === "time") return PLAN_TIME;
  const metric = role === "operand" ? undefined : knownMetricAt(node);
  return metric === undefined ? undefined : measureOf(metric);
}

/** What a metric measures; undefined where that is not known. */
export function measureOf(metric: Metric): Measure | undefined {
  const dimension = metric.dimension?.ref;
  const unit = unitToWrite(metric);
  if (dimension === undefined || unit === undefined) return undefined;
  return { metric, dimension: { name: dimension.name, vector: vectorOf(dimension) }, unit };
}

/**
 * The unit in which amounts of this metric are best written: the one it is shown in, or else the first of its dimension;
 * empty for a plain number, undefined where nothing is known.
 */
export function unitToWrite(metric: Metric): string | undefined {
  const dimension = metric.dimension?.ref;
  if (dimension === undefined) return undefined;
  const { symbol } = shownIn(metric).unit;
  const symbols = unitSymbols(dimension);
  if (symbol === "" ? isPlainNumber(dimension) : symbols.includes(symbol)) return symbol;
  return isPlainNumber(dimension) ? "" : symbols[0];
}

/** Whether a unit is one of this dimension. */
export function unitFits(unit: UnitName, { vector }: Measure["dimension"]): boolean {
  return sameDimension(vectorOf(dimensionOfUnit(unit)), vector);
}

/** The metric whose amounts stand here, where it is known and so is its dimension. */
export function knownMetricAt(node: AstNode): Metric | undefined {
  const metric = metricAt(node);
  return metric?.dimension?.ref === undefined ? undefined : metric;
}
