/**
 * Statements about a change of a player's true average between two blocks, by Welch's t (Welch 1947). A change is
 * now − baseline, so it is positive where the number rose. Shots are independent, never pairs.
 *
 * A claim is about the true change, so the amount claimed is in it: "gains at least 5 yd" is the claim 5 … ∞ and is met
 * when the lower limit reaches 5; "falls by at least 5" is −∞ … −5; "loses no more than 4" is −4 … ∞; "stays within ±3" is
 * −3 … 3. `judgeByLimits` has the rule.
 *
 * The promised error is kept for normal shots at all sizes from 5 on, whatever the two spreads: that is why the pooled t
 * is not used, which errs 0.18 where 0.10 is allowed with few and wild new shots.
 */
import { allowedError } from "./confidence.ts";
import { studentQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import type { Sample } from "./summary.ts";

export interface Change {
  /** Now − baseline. */
  readonly difference: number;
  readonly standardError: number;
  /** Of the standard error; fractional. Infinite where nothing varies. */
  readonly degreesOfFreedom: number;
}

/**
 * The change of the average, SE² = s₁²/n₁ + s₂²/n₂ + shared, with SE⁴/(Σ (sᵢ²/nᵢ)²/(nᵢ − 1)) degrees of freedom.
 * `undefined` where a block has a single shot.
 *
 * @param unsharedVariance what the readings of the two blocks may be off against each other: 0 with the same instrument
 *   in the same set-up, where it cancels; twice the square of the systematic uncertainty in different ones
 */
export function meanChange(baseline: Sample, now: Sample, unsharedVariance = 0): Change | undefined {
  if (baseline.sd === undefined || now.sd === undefined) return undefined;
  const before = (baseline.sd * baseline.sd) / baseline.n;
  const after = (now.sd * now.sd) / now.n;
  const variance = before + after + unsharedVariance;
  const uncertain = (before * before) / (baseline.n - 1) + (after * after) / (now.n - 1);
  return {
    difference: now.mean - baseline.mean,
    standardError: Math.sqrt(variance),
    degreesOfFreedom: uncertain === 0 ? Number.POSITIVE_INFINITY : (variance * variance) / uncertain,
  };
}

/**
 * The true change is below `low`, or above `high`, with probability at most 1 − confidence each.
 * `undefined` where a block has a single shot, or for a confidence outside 0.5 … 1.
 */
export function meanChangeLimits(
  baseline: Sample,
  now: Sample,
  confidence: number,
  unsharedVariance = 0,
): Interval | undefined {
  const change = meanChange(baseline, now, unsharedVariance);
  const margin = smallestChangeShown(baseline, now, confidence, unsharedVariance);
  if (change === undefined || margin === undefined) return undefined;
  return { low: change.difference - margin, high: change.difference + margin };
}

/**
 * The smallest change that these shots could have shown to be one, up or down: t·SE. An observed difference must exceed
 * what is claimed by as much.
 */
export function smallestChangeShown(
  baseline: Sample,
  now: Sample,
  confidence: number,
  unsharedVariance = 0,
): number | undefined {
  const change = meanChange(baseline, now, unsharedVariance);
  const error = allowedError(confidence);
  if (change === undefined || Number.isNaN(error)) return undefined;
  return studentQuantile(1 - error, change.degreesOfFreedom) * change.standardError;
}
