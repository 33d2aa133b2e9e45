/**
 * Numbers that describe the shots hit. Where there is nothing to describe the answer is `undefined`, never zero
 * and never NaN. Values must be finite.
 */

import { once } from "../once.ts";

/** What most methods need to know of a list of values. */
export interface Sample {
  /** How many values, at least 1. */
  readonly n: number;
  readonly mean: number;
  /** Standard deviation with divisor n − 1; `undefined` for a single value, 0 when all values are equal. */
  readonly sd: number | undefined;
}

/** The sample's size, mean and standard deviation; `undefined` without values. */
export function sampleOf(values: readonly number[]): Sample | undefined {
  const average = mean(values);
  if (average === undefined) return undefined;
  return { n: values.length, mean: average, sd: deviationFrom(average, values) };
}

/**
 * The arithmetic mean; `undefined` without values.
 * A second pass adds the mean of what rounding left over, so equal values have exactly their value as mean.
 */
export function mean(values: readonly number[]): number | undefined {
  const n = values.length;
  if (n === 0) return undefined;
  let total = 0;
  for (let place = 0; place < n; place++) total += values[place] as number;
  const first = total / n;
  let rest = 0;
  for (let place = 0; place < n; place++) rest += (values[place] as number) - first;
  return first + rest / n;
}

/** The standard deviation with divisor n − 1; `undefined` below two values. */
export function standardDeviation(values: readonly number[]): number | undefined {
  const average = mean(values);
  return average === undefined ? undefined : deviationFrom(average, values);
}

/** The middle value, or the mean of the two middle values; `undefined` without values. */
export function median(values: readonly number[]): number | undefined {
  const sorted = ascending(values);
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  const upper = sorted[Math.floor(sorted.length / 2)];
  return lower === undefined || upper === undefined ? undefined : (lower + upper) / 2;
}

/**
 * The sample quantile of type 7 (Hyndman & Fan 1996): linear between the order statistics, the smallest value at
 * p = 0 and the largest at p = 1. `undefined` without values or for p outside 0 … 1; a single value is every
 * quantile of itself.
 */
export function quantile(values: readonly number[], p: number): number | undefined {
  if (!(p >= 0 && p <= 1)) return undefined;
  const sorted = ascending(values);
  const position = (sorted.length - 1) * p;
  const below = sorted[Math.floor(position)];
  const above = sorted[Math.ceil(position)];
  if (below === undefined || above === undefined) return undefined;
  return below + (position - Math.floor(position)) * (above - below);
}

/**
 * Two passes with correction (Chan, Golub & LeVeque 1983): the squared sum of the deviations, zero but for
 * rounding, is taken off again. A one-pass formula loses all digits when the values are large against their spread.
 */
function deviationFrom(average: number, values: readonly number[]): number | undefined {
  const n = values.length;
  if (n < 2) return undefined;
  let left = 0;
  let squares = 0;
  for (let place = 0; place < n; place++) {
    const deviation = (values[place] as number) - average;
    left += deviation;
    squares += deviation * deviation;
  }
  return Math.sqrt(Math.max(0, squares - (left * left) / n) / (n - 1));
}

/**
 * The values in order, the smallest first. Sorted once for each list, which nobody changes: several goals ask about the same
 * readings. A typed array sorts without asking a function which is smaller.
 */
export const ascending = once((values: readonly number[]): readonly number[] =>
  Array.from(Float64Array.from(values).sort()),
);
