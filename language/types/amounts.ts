/** What an amount in the text is an amount of. */
import {
  isExpression,
  isPlanTime,
  isStatisticCriterion,
  isWithin,
  type Metric,
  type Quantity,
} from "../generated/ast.ts";
import { type DimensionVector, isPlainNumber, sameDimension, vectorOf } from "./dimensions.ts";
import { directionsOf, metricAt } from "./directions.ts";
import { dimensionOfUnit, shownIn, unitSymbols } from "./units.ts";

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

/** The dimension of a metric; undefined where it is unknown. */
export function vectorOfMetric(metric: Metric): DimensionVector | undefined {
  const dimension = metric.dimension?.ref;
  return dimension === undefined ? undefined : vectorOf(dimension);
}

/** Whether the dimension of an amount's unit is this one; true where the unit is not stated or not known. */
export function unitFits({ unit }: Pick<Quantity, "unit">, dimension: DimensionVector): boolean {
  const name = unit?.ref;
  return name === undefined || sameDimension(vectorOf(dimensionOfUnit(name)), dimension);
}

/** The metric whose amounts stand here, where it is known and so is its dimension. */
export function knownMetricAt(node: Parameters<typeof metricAt>[0]): Metric | undefined {
  const metric = metricAt(node);
  return metric?.dimension?.ref === undefined ? undefined : metric;
}
