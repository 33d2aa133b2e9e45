/** How likely a statement about an average, or about its change, is to be decided. Estimates: `chances.ts`. */

import type { Chances } from "./chances.ts";
import { allowedError } from "./confidence.ts";
import { normalCdf, studentQuantile } from "./distributions.ts";
import { type Interval, isInside } from "./interval.ts";
import { averageOverSpread } from "./spread-law.ts";
import type { Sample } from "./summary.ts";
import { meanChange } from "./welch.ts";

/**
 * The chances of "the true average lies in `claim`" with the shots of `truth`: its n, and the average and spread that are
 * assumed to be the player's. Exact for normal shots and one limit (noncentral t); for a range right to 1e-3.
 */
export function meanChances(truth: Sample, claim: Interval, confidence: number): Chances {
  const { n, mean, sd } = truth;
  if (sd === undefined) return { met: 0, missed: 0 };
  return chances(mean, sd / Math.sqrt(n), n - 1, claim, confidence);
}

/**
 * The chances of "the true average has changed by an amount in `claim`", from what is assumed to be true of either block.
 * Exact for equal numbers of normal shots with equal spreads, and a good estimate beyond.
 */
export function meanChangeChances(
  baseline: Sample,
  now: Sample,
  claim: Interval,
  confidence: number,
): Chances {
  const change = meanChange(baseline, now);
  if (change === undefined) return { met: 0, missed: 0 };
  return chances(change.difference, change.standardError, change.degreesOfFreedom, claim, confidence);
}

/**
 * The estimate is normal about the truth, and its standard error scatters as a standard deviation does. The rule is that of
 * `judgeByLimits`.
 */
function chances(
  truth: number,
  standardError: number,
  degrees: number,
  claim: Interval,
  confidence: number,
): Chances {
  const low = (claim.low - truth) / standardError;
  const high = (claim.high - truth) / standardError;
  const isRange = Number.isFinite(claim.low) && Number.isFinite(claim.high);
  const t = studentQuantile(1 - allowedError(confidence), degrees);
  const outer = isRange ? studentQuantile(1 - allowedError((1 + confidence) / 2), degrees) : t;
  if (Number.isNaN(t) || Number.isNaN(outer)) return { met: 0, missed: 0 };
  if (standardError === 0) return isInside(truth, claim, 0) ? { met: 1, missed: 0 } : { met: 0, missed: 1 };
  const ends = [low, high].filter(Number.isFinite).map(Math.abs);
  const average = (value: (s: number) => number) =>
    averageOverSpread(degrees, Math.min(Math.max(0, ...ends), 9 * outer), value);
  return {
    met: average((s) => Math.max(0, normalCdf(high - t * s) - normalCdf(low + t * s))),
    missed: average((s) => normalCdf(low - outer * s) + normalCdf(-high - outer * s)),
  };
}
