/** How wide the middle of the shots is: the middle 80 % is what lies between the 10th and the 90th percentile. */
import type { Interval } from "./interval.ts";
import { percentileLimits } from "./percentile.ts";
import { quantile } from "./summary.ts";

/**
 * The width of the middle `share` (0 … 1) of the shots hit: the difference of two quantiles of type 7.
 * `undefined` without values or for a share outside 0 … 1. O(n log n).
 */
export function middleSpan(values: readonly number[], share: number): number | undefined {
  const low = quantile(values, (1 - share) / 2);
  const high = quantile(values, (1 + share) / 2);
  return low === undefined || high === undefined || !(share >= 0) ? undefined : high - low;
}

/**
 * The player's true span is below `low`, or above `high`, with probability at most 1 − confidence each. Each limit is a
 * difference of two order statistics, each of which may take half of the error (Bonferroni): a simple safe bound, not
 * the narrowest. With fewer than about 30 shots `high` is mostly Infinity for a share of 80 % or more.
 * `undefined` where neither side has a limit. O(n log n).
 */
export function middleSpanLimits(
  values: readonly number[],
  share: number,
  confidence: number,
): Interval | undefined {
  const level = (1 + confidence) / 2;
  const lower = percentileLimits(values, (1 - share) / 2, level);
  const upper = percentileLimits(values, (1 + share) / 2, level);
  if (lower === undefined || upper === undefined) return undefined;
  const limits = { low: Math.max(0, upper.low - lower.high), high: upper.high - lower.low };
  return limits.low === 0 && limits.high === Number.POSITIVE_INFINITY ? undefined : limits;
}
