/**
 * Statements about a player's long-run hit rate: "at least (at most) 70 % of shots … at 90 % confidence".
 *
 * Decided by exact binomial tails, which is the inversion of the one-sided limits of Clopper & Pearson (1934).
 * Score limits (Wilson) are narrower on average, but a verdict uses one side at one value, where they break the
 * promise: with 3 hits of 3 they call "at least 80 % at 80 % confidence" met for half of all players just below.
 *
 * "At most" is the same test with *met* and *missed* exchanged. Shares and confidence are 0 … 1; a share outside,
 * a confidence outside 0.5 … 1 or more hits than shots decide nothing.
 */
import { binomialProbabilities } from "./binomial.ts";
import { allowedError, keepsError } from "./confidence.ts";
import { betaQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import { fewestThatDecide, MOST_SHOTS } from "./shots-to-decide.ts";
import type { Bound, Decision } from "./verdict.ts";

/** One number for each way to end; `undefined` where that way is closed. */
export interface MetAndMissed {
  readonly met: number | undefined;
  readonly missed: number | undefined;
}

/** Judges a share as ability from `hits` of `n` shots. */
export function shareVerdict(
  hits: number,
  n: number,
  share: number,
  confidence: number,
  bound: Bound = "at least",
): Decision {
  if (!Number.isInteger(hits) || hits < 0 || hits > n) return "undecided";
  const { met: fewestAbove, missed: mostBelow } = criticalCounts(n, share, confidence);
  if (fewestAbove !== undefined && hits >= fewestAbove) return bound === "at least" ? "met" : "missed";
  if (mostBelow !== undefined && hits <= mostBelow) return bound === "at least" ? "missed" : "met";
  return "undecided";
}

/**
 * The counts at which `n` shots decide. "At least": met from `met` hits, missed up to `missed` hits.
 * "At most": met up to `met` hits, missed from `missed` hits.
 */
export function criticalCounts(
  n: number,
  share: number,
  confidence: number,
  bound: Bound = "at least",
): MetAndMissed {
  const error = allowedError(confidence);
  const probabilities = binomialProbabilities(n, share);
  let above: number | undefined;
  for (let hits = n, tail = 0; hits >= 0; hits--) {
    tail += probabilities[hits] ?? Number.NaN;
    if (!keepsError(tail, error)) break;
    above = hits;
  }
  let below: number | undefined;
  for (let hits = 0, tail = 0; hits <= n; hits++) {
    tail += probabilities[hits] ?? Number.NaN;
    if (!keepsError(tail, error)) break;
    below = hits;
  }
  return oriented(above, below, bound);
}

/**
 * The fewest shots with which each end is possible at all, by nothing but hits or nothing but misses.
 * `undefined` when even `MOST_SHOTS` would not do.
 */
export function fewestShots(share: number, confidence: number, bound: Bound = "at least"): MetAndMissed {
  const error = allowedError(confidence);
  return oriented(fewestInARow(share, error), fewestInARow(1 - share, error), bound);
}

/**
 * The limits to show beside a verdict: the true rate is below `low`, or above `high`, with probability at most
 * 1 − confidence each. `undefined` without shots or for impossible counts.
 */
export function shareLimits(hits: number, n: number, confidence: number): Interval | undefined {
  const error = allowedError(confidence);
  const low = hits === 0 ? 0 : betaQuantile(error, hits, n - hits + 1);
  const high = hits === n ? 1 : betaQuantile(1 - error, hits + 1, n - hits);
  return n > 0 && low <= high ? { low, high } : undefined;
}

/**
 * About how many shots in all would decide if the player goes on hitting at the rate observed: the smallest N ≥ n
 * at which that rate, rounded towards the share, decides. An estimate, and no invitation to stop there.
 * `undefined` when the rate observed is the share itself, or when more than `most` shots would be needed.
 */
export function shareShotsToDecide(
  hits: number,
  n: number,
  share: number,
  confidence: number,
  most: number = MOST_SHOTS,
): number | undefined {
  const gap = hits / n - share;
  if (!(Math.abs(gap) > 1e-9)) return undefined;
  const towardsShare = gap > 0 ? Math.floor : Math.ceil;
  return fewestThatDecide(n, most, (total) => {
    const expected = towardsShare((hits * total) / n);
    return shareVerdict(expected, total, share, confidence) !== "undecided";
  });
}

/** The fewest shots in a row whose probability keeps the allowed error. */
function fewestInARow(rate: number, error: number): number | undefined {
  for (let shots = 1, probability = rate; shots <= MOST_SHOTS; shots++, probability *= rate) {
    if (keepsError(probability, error)) return shots;
  }
  return undefined;
}

function oriented(above: number | undefined, below: number | undefined, bound: Bound): MetAndMissed {
  return bound === "at least" ? { met: above, missed: below } : { met: below, missed: above };
}
