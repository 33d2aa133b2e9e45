/**
 * Whether a value lies within limits when its reading may be off: JCGM 106 (conformance probability). The doubt is
 * normal, with the standard uncertainty u in the unit of the reading; u = 0 means that the reading is exact.
 */
import { allowedError, keepsError } from "./confidence.ts";
import { normalCdf } from "./distributions.ts";
import { type Interval, isInside } from "./interval.ts";
import type { Decision } from "./verdict.ts";

/**
 * P(the true value lies in `claim`) = Φ((high − y)/u) − Φ((low − y)/u) for a reading y. An exact reading has 1 or 0, by
 * `isInside`; a negative or missing uncertainty has NaN.
 */
export function conformanceProbability(
  reading: number,
  uncertainty: number,
  claim: Interval,
  slack: number,
): number {
  if (uncertainty === 0) return isInside(reading, claim, slack) ? 1 : 0;
  if (!(uncertainty > 0)) return Number.NaN;
  const low = (claim.low - reading) / uncertainty;
  const high = (claim.high - reading) / uncertainty;
  if (low < -CERTAIN && high > CERTAIN) return 1;
  // Of two upper tails the small ones are taken: a difference of two numbers near 1 would lose its digits.
  return low > 0 ? normalCdf(-low) - normalCdf(-high) : normalCdf(high) - normalCdf(low);
}

/** Φ of this is 1 to the last digit. */
const CERTAIN = 9;

/**
 * Met where the probability reaches the level, missed where it is at most 1 − level, else undecided. A level outside
 * 0.5 … 1 (excluded) decides nothing.
 */
export function verdictByProbability(probability: number, level: number): Decision {
  const error = allowedError(level);
  if (keepsError(1 - probability, error)) return "met";
  return keepsError(probability, error) ? "missed" : "undecided";
}

/**
 * The conformance probability of the best reading there is, the one in the middle of the range: 2Φ(h/u) − 1 with half the
 * width h. A range for which it is below the level can never be met: from about u = 0.51 h at 0.95. With one limit it is 1.
 */
export function bestConformance(uncertainty: number, claim: Interval): number {
  const isRange = Number.isFinite(claim.low) && Number.isFinite(claim.high);
  return isRange ? conformanceProbability((claim.low + claim.high) / 2, uncertainty, claim, 0) : 1;
}
