/**
 * Arithmetic on ranges of numbers: where a sum, a product … lies when its parts lie in these ranges. An end that has to be
 * rounded goes outwards, so that no value that can be is ever lost.
 */
import type { Interval } from "../../../shared/statistics/interval.ts";

export const WHOLE: Interval = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };

/** More than an operation on doubles is off, relative to its result. */
const ROUNDING = 1e-15;

export function isEmpty({ low, high }: Interval): boolean {
  return !(low <= high);
}

/** What lies in both. */
export function meet(one: Interval, other: Interval): Interval {
  return { low: Math.max(one.low, other.low), high: Math.min(one.high, other.high) };
}

/** The smallest range that holds both; an empty one has no part in it. */
export function join(one: Interval, other: Interval): Interval {
  if (isEmpty(one)) return other;
  if (isEmpty(other)) return one;
  return { low: Math.min(one.low, other.low), high: Math.max(one.high, other.high) };
}

/** Everything in the range, and what is no further from it than `by`. */
export function widened({ low, high }: Interval, by: number): Interval {
  return { low: low - by, high: high + by };
}

export function holds(outer: Interval, inner: Interval): boolean {
  return outer.low <= inner.low && inner.high <= outer.high;
}

export function sum(one: Interval, other: Interval): Interval {
  return outwards(one.low + other.low, one.high + other.high);
}

export function difference(one: Interval, other: Interval): Interval {
  return outwards(one.low - other.high, one.high - other.low);
}

export function product(one: Interval, other: Interval): Interval {
  const corners = [
    times(one.low, other.low),
    times(one.low, other.high),
    times(one.high, other.low),
    times(one.high, other.high),
  ];
  return outwards(Math.min(...corners), Math.max(...corners));
}

/** One divided by the other; nothing is divided by 0. */
export function quotient(one: Interval, other: Interval): Interval {
  const { low, high } = other;
  if ((low < 0 && high > 0) || (low === 0 && high === 0)) return WHOLE;
  const inverse =
    low === 0
      ? { low: 1 / high, high: Number.POSITIVE_INFINITY }
      : high === 0
        ? { low: Number.NEGATIVE_INFINITY, high: 1 / low }
        : { low: 1 / high, high: 1 / low };
  return product(one, outwards(inverse.low, inverse.high));
}

/** What the other factor is when `one` is a factor of `product`: anything, where both can be 0. */
export function otherFactor(product: Interval, one: Interval): Interval {
  return hasZero(product) && hasZero(one) ? WHOLE : quotient(product, one);
}

function hasZero({ low, high }: Interval): boolean {
  return low <= 0 && high >= 0;
}

/** An end of 0 stays 0, however large the other factor may become. */
function times(one: number, other: number): number {
  return one === 0 || other === 0 ? 0 : one * other;
}

function outwards(low: number, high: number): Interval {
  return {
    low: Number.isFinite(low) ? low - Math.abs(low) * ROUNDING : low,
    high: Number.isFinite(high) ? high + Math.abs(high) * ROUNDING : high,
  };
}
