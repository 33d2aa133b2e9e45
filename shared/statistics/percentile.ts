/**
 * Statements about a percentile of a player's shots (the median is the 50th), by order statistics: the r-th smallest of
 * n shots is a limit, whatever the shape of their distribution.
 *
 * "The 90th percentile is at most T" says the same as "at least 90 % of shots are at most T", and ends the same: the
 * ranks are those at which the exact binomial test of a share decides. The levels reached are discrete and belong in the
 * evidence. Few shots have no limit on the far side at all: 10 shots none above the 90th percentile.
 *
 * A percentile is 0 … 1 (excluded). All functions are O(n), or O(n log n) where the shots are sorted.
 */
import { binomialAtLeast, binomialAtMost } from "./binomial.ts";
import { type Interval, isAtMost, isBelow } from "./interval.ts";
import { criticalCounts, fewestShots, shareVerdict } from "./proportion.ts";
import { fewestThatDecide, MOST_SHOTS } from "./shots-to-decide.ts";
import { ascending } from "./summary.ts";

/** A rank among n shots, 1 for the smallest, and the confidence that a limit at this rank reaches. */
export interface RankLimit {
  readonly rank: number;
  readonly reached: number;
}

/** Which shots are the limits; `undefined` where n shots have none at this confidence. */
export interface RankLimits {
  readonly low: RankLimit | undefined;
  readonly high: RankLimit | undefined;
}

/**
 * Lower limit: the largest rank r with P(Bin(n, percentile) ≥ r) ≥ confidence.
 * Upper limit: the smallest rank s with P(Bin(n, percentile) ≤ s − 1) ≥ confidence.
 */
export function percentileRanks(n: number, percentile: number, confidence: number): RankLimits {
  const { met: upper, missed: mostBelow } = criticalCounts(n, percentile, confidence);
  const lower = mostBelow === undefined ? undefined : mostBelow + 1;
  return {
    low: lower === undefined ? undefined : { rank: lower, reached: binomialAtLeast(lower, n, percentile) },
    high:
      upper === undefined ? undefined : { rank: upper, reached: binomialAtMost(upper - 1, n, percentile) },
  };
}

/**
 * The player's true percentile is below `low`, or above `high`, with probability at most 1 − confidence each; ±Infinity
 * where these shots have no limit on that side, `undefined` where they have none at all.
 */
export function percentileLimits(
  values: readonly number[],
  percentile: number,
  confidence: number,
): Interval | undefined {
  const { low, high } = percentileRanks(values.length, percentile, confidence);
  if (low === undefined && high === undefined) return undefined;
  const sorted = ascending(values);
  return {
    low: sorted[(low?.rank ?? Number.NaN) - 1] ?? Number.NEGATIVE_INFINITY,
    high: sorted[(high?.rank ?? Number.NaN) - 1] ?? Number.POSITIVE_INFINITY,
  };
}

/** The fewest shots that have a lower, and an upper, limit; `undefined` where even `MOST_SHOTS` have none. */
export function fewestShotsForLimits(
  percentile: number,
  confidence: number,
): Record<"low" | "high", number | undefined> {
  const { met: high, missed: low } = fewestShots(percentile, confidence);
  return { low, high };
}

/**
 * About how many shots in all would decide whether the percentile lies in `claim` if the shots go on falling on either
 * side of its ends as observed. An estimate, and no invitation to stop there. O(most²).
 * `undefined` when more than `most` shots would be needed.
 */
export function percentileShotsToDecide(
  values: readonly number[],
  percentile: number,
  claim: Interval,
  confidence: number,
  slack: number,
  most: number = MOST_SHOTS,
): number | undefined {
  const n = values.length;
  const below = values.filter((value) => isBelow(value, claim.low, slack)).length;
  const upTo = values.filter((value) => isAtMost(value, claim.high, slack)).length;
  const isRange = Number.isFinite(claim.low) && Number.isFinite(claim.high);
  const verdicts = (total: number, level: number) => [
    claim.low === Number.NEGATIVE_INFINITY
      ? "met"
      : shareVerdict(goingOn(below, n, total, percentile), total, percentile, level, "at most"),
    claim.high === Number.POSITIVE_INFINITY
      ? "met"
      : shareVerdict(goingOn(upTo, n, total, percentile), total, percentile, level),
  ];
  return fewestThatDecide(n, most, (total) => {
    if (verdicts(total, confidence).every((verdict) => verdict === "met")) return true;
    return verdicts(total, isRange ? (1 + confidence) / 2 : confidence).includes("missed");
  });
}

/** The count among `total` shots at the rate of `count` of `n`, rounded towards the share. */
function goingOn(count: number, n: number, total: number, share: number): number {
  const expected = (count * total) / n;
  return count / n > share ? Math.floor(expected) : Math.ceil(expected);
}
