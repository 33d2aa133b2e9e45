/** The number that a statistic makes of values. */
import type { Direction, Hand, Metric, Statistic } from "../../../shared/plan-model.ts";
import { middleSpan } from "../../../shared/statistics/middle-span.ts";
import { spreadWithoutReadings } from "../../../shared/statistics/reading-uncertainty.ts";
import { mean, median, quantile, standardDeviation } from "../../../shared/statistics/summary.ts";

/** How the values of a metric stand to each other. */
export interface Order {
  /** Whether they go two ways from zero: best and worst are then the nearest to it and the farthest from it. */
  readonly hasSides: boolean;
  /**
   * +1 where values are in order as the target frame has them, −1 where in the opposite order: from out-to-in to
   * in-to-out for either hand, so that mirror images have mirrored percentiles.
   */
  readonly sign: 1 | -1;
}

/**
 * The order of a metric's values for a player of this hand; where sides are written as everybody sees them, that of the
 * frame.
 *
 * @param written the direction words of the criterion
 */
export function orderOf({ directions }: Metric, hand: Hand, written: readonly Direction[]): Order {
  const isMirrored =
    hand === "left" &&
    directions.some(({ handed }) => handed) &&
    (written.length === 0 || written.some(({ handed }) => handed));
  return { hasSides: directions.length > 0, sign: isMirrored ? -1 : 1 };
}

/**
 * Undefined where there are too few values: none, or a single one for a spread. O(n), or O(n log n) by size.
 *
 * @param random standard uncertainty of a reading from shot to shot, which a spread is without
 */
export function compute(
  statistic: Statistic,
  values: readonly number[],
  order: Order,
  random = 0,
): number | undefined {
  switch (statistic.kind) {
    case "average":
      return mean(values);
    case "median":
      return median(values);
    case "spread": {
      const spread = standardDeviation(values);
      return spread && spreadWithoutReadings(spread, random);
    }
    case "percentile": {
      const percentile = quantile(inOrder(values, order), statistic.share);
      return percentile && order.sign * percentile;
    }
    case "span":
      return middleSpan(inOrder(values, order), statistic.share);
    case "best":
    case "worst":
      return extremes(statistic.kind, values, order)[0];
  }
}

/** So that mirror images are computed with the same digits. */
function inOrder(values: readonly number[], { sign }: Order): readonly number[] {
  return sign === 1 ? values : values.map((value) => -value);
}

/**
 * The best or the worst value: without sides the largest or the smallest, with sides the nearest to zero or the farthest
 * from it. Where that is reached on both sides, both of them, the one of the order's positive side first. O(n).
 */
export function extremes(
  kind: "best" | "worst",
  values: readonly number[],
  { hasSides, sign }: Order,
): readonly number[] {
  if (values.length === 0) return [];
  const best = (one: number, other: number) => Math.max(one, other);
  const worst = (one: number, other: number) => Math.min(one, other);
  if (!hasSides) return [values.reduce(kind === "best" ? best : worst)];
  const distance = values.map(Math.abs).reduce(kind === "best" ? worst : best);
  return [sign * distance, -sign * distance]
    .filter((value) => values.includes(value))
    .map((value) => value + 0);
}
