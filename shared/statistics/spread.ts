/**
 * Statements about a player's true spread: the standard deviation of the shots they would hit in the long run.
 *
 * Exact for normally distributed shots, by the chi-square law of the sample variance. It does not forgive shots that
 * are not: with one shot in ten at three times the spread, "met" is wrong in 24 of 100 cases where 10 were promised, and
 * more shots do not help. So a verdict comes with a caution unless the shots look normal (`looks-normal.ts`);
 * `bonett.ts` has sturdier limits.
 */
import { allowedError } from "./confidence.ts";
import { chiSquareQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import type { Sample } from "./summary.ts";

/** What the method needs to know of the shots. */
export type SpreadOf = Pick<Sample, "n" | "sd">;

/**
 * The true standard deviation is below `low`, or above `high`, with probability at most 1 − confidence each:
 * sd·√((n − 1)/χ²) with the quantiles of n − 1 degrees of freedom.
 * In a claim "at most" the low end is −Infinity: a low end of 0 would be judged as a range.
 * `undefined` for a single shot, or a confidence outside 0.5 … 1. Equal readings give limits of zero width.
 */
export function spreadLimits({ n, sd }: SpreadOf, confidence: number): Interval | undefined {
  const error = allowedError(confidence);
  const degrees = n - 1;
  if (sd === undefined || !(degrees > 0) || Number.isNaN(error)) return undefined;
  const limit = (p: number) => sd * Math.sqrt(degrees / chiSquareQuantile(p, degrees));
  return { low: limit(1 - error), high: limit(error) };
}
