/**
 * By which share an average changed. "now is at least c times before" is a claim about now − c·before, which Welch's t
 * judges; the limits of the ratio are those c at which it is just decided (Fieller 1954).
 */
import type { Interval } from "../../../../shared/statistics/interval.ts";
import { meanLimits } from "../../../../shared/statistics/student.ts";
import type { Sample } from "../../../../shared/statistics/summary.ts";
import { meanChangeLimits } from "../../../../shared/statistics/welch.ts";

/** Halvings of a range: twice as many as a number has digits. */
const STEPS = 60;

/**
 * The true now/before − 1 is below `low`, or above `high`, with probability at most 1 − confidence each. `high` is
 * Infinity where these shots cannot show that the baseline is above zero. About 120 limits of Welch's t.
 * `undefined` where a block has a single shot or no average above zero, or for a confidence outside 0.5 … 1.
 *
 * @param unshared variance of now − factor·before by what the readings of each block share
 */
export function meanRatioLimits(
  before: Sample,
  now: Sample,
  confidence: number,
  unshared: (factor: number) => number,
): Interval | undefined {
  if (!(before.mean > 0) || !(now.mean > 0)) return undefined;
  const contrast = (factor: number) =>
    meanChangeLimits(
      { n: before.n, mean: factor * before.mean, sd: before.sd && factor * before.sd },
      now,
      confidence,
      unshared(factor),
    );
  const baseline = meanLimits(before, confidence);
  if (baseline === undefined || contrast(1) === undefined) return undefined;
  const ratio = now.mean / before.mean;
  const isBelow = (factor: number) => (contrast(factor)?.low ?? 0) > 0;
  const isNotAbove = (factor: number) => (contrast(factor)?.high ?? 0) > 0;
  const low = lastWhere(isBelow, 0, ratio);
  if (!(baseline.low > 0)) return { low: low - 1, high: Number.POSITIVE_INFINITY };
  let beyond = 2 * ratio;
  while (isNotAbove(beyond) && beyond < Number.MAX_VALUE / 4) beyond *= 2;
  return { low: low - 1, high: lastWhere(isNotAbove, ratio, beyond) - 1 };
}

/** Where a statement that holds from `from` on stops to hold, no further than `to`. */
function lastWhere(holds: (factor: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < STEPS; step++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
