/**
 * Statements about a change of a player's true spread between two blocks, for normal shots and with the same caution as
 * the spread itself (`spread.ts`).
 *
 * In percent the ratio now/baseline decides: "falls by at least 20 %" is the claim 0 … 0.8. In a unit the difference
 * now − baseline does: "falls by at least 2 yd" is the claim −∞ … −2.
 */
import { allowedError } from "./confidence.ts";
import { fisherQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import { type SpreadOf, spreadLimits } from "./spread.ts";

/**
 * The true ratio of the standard deviations, now/baseline, is below `low`, or above `high`, with probability at most
 * 1 − confidence each: the observed ratio over √F, and times √F of the exchanged degrees of freedom.
 * `undefined` where a block has a single shot or the baseline no spread, or for a confidence outside 0.5 … 1.
 */
export function spreadRatioLimits(
  baseline: SpreadOf,
  now: SpreadOf,
  confidence: number,
): Interval | undefined {
  const level = 1 - allowedError(confidence);
  if (!baseline.sd || now.sd === undefined || Number.isNaN(level)) return undefined;
  const ratio = now.sd / baseline.sd;
  return {
    low: ratio / Math.sqrt(fisherQuantile(level, now.n - 1, baseline.n - 1)),
    high: ratio * Math.sqrt(fisherQuantile(level, baseline.n - 1, now.n - 1)),
  };
}

/**
 * The true difference of the standard deviations, now − baseline, is below `low`, or above `high`, with probability at
 * most 1 − confidence each. Each limit takes one limit of each spread, which have half of the error each (Bonferroni): a
 * simple safe bound, not the narrowest.
 * `undefined` where a block has a single shot, or for a confidence outside 0.5 … 1.
 */
export function spreadDifferenceLimits(
  baseline: SpreadOf,
  now: SpreadOf,
  confidence: number,
): Interval | undefined {
  const level = (1 + confidence) / 2;
  const before = spreadLimits(baseline, level);
  const after = spreadLimits(now, level);
  if (before === undefined || after === undefined || Number.isNaN(allowedError(confidence))) return undefined;
  return { low: after.low - before.high, high: after.high - before.low };
}
