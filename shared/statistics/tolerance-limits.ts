/**
 * Statements about a percentile by a normal model: far closer than order statistics with ten shots, and wrong in the tails
 * where the model is. Only for a coach who accepts it; `percentile.ts` needs no model.
 */
import { allowedError } from "./confidence.ts";
import { normalQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import { noncentralQuantile } from "./noncentral-t.ts";
import type { Sample } from "./summary.ts";

/**
 * The k for which mean + k·sd of n shots is above the percentile (0 … 1, excluded) with this confidence: t′/√n, with the
 * noncentral t of n − 1 degrees of freedom and noncentrality z·√n. NaN below two shots.
 */
export function toleranceFactor(n: number, percentile: number, confidence: number): number {
  const noncentrality = normalQuantile(percentile) * Math.sqrt(n);
  return noncentralQuantile(confidence, n - 1, noncentrality) / Math.sqrt(n);
}

/**
 * The player's true percentile is below `low`, or above `high`, with probability at most 1 − confidence each, if the shots
 * are normal. `undefined` for a single shot, or a confidence outside 0.5 … 1.
 */
export function normalPercentileLimits(
  { n, mean, sd }: Sample,
  percentile: number,
  confidence: number,
): Interval | undefined {
  const error = allowedError(confidence);
  if (sd === undefined || Number.isNaN(error)) return undefined;
  const low = mean + toleranceFactor(n, percentile, error) * sd;
  const high = mean + toleranceFactor(n, percentile, 1 - error) * sd;
  return Number.isNaN(low) || Number.isNaN(high) ? undefined : { low, high };
}
