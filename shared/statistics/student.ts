/**
 * Statements about a player's true average, by Student's t.
 *
 * Exact for normally distributed shots and good beyond: with heavy tails the promised error is exceeded by a
 * hundredth at most, with skewed shots one side errs somewhat more and the other less.
 * Equal readings (sd = 0, usually the resolution of the display) give limits of zero width: the caller says so.
 */
import { allowedError } from "./confidence.ts";
import { studentQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import { firstThatDecides, MOST_SHOTS } from "./shots-to-decide.ts";
import type { Sample } from "./summary.ts";
import { type Decision, verdictByLimits } from "./verdict.ts";

/**
 * The true average is below `low`, or above `high`, with probability at most 1 − confidence each.
 * `undefined` for a single shot, or a confidence outside 0.5 … 1.
 *
 * @param systematic the standard uncertainty that all readings share, which no number of shots averages out. The random
 *   part of a reading is in the scatter of the shots already. With u² = sd²/n + systematic² the degrees of freedom are
 *   u⁴/((sd²/n)²/(n − 1)) (Welch–Satterthwaite).
 */
export function meanLimits(sample: Sample, confidence: number, systematic = 0): Interval | undefined {
  const { n, mean, sd } = sample;
  if (sd === undefined) return undefined;
  const variance = (sd * sd) / n;
  const combined = variance + systematic * systematic;
  const degrees = systematic === 0 ? n - 1 : ((combined * combined) / (variance * variance)) * (n - 1);
  const t = studentQuantile(1 - allowedError(confidence), degrees);
  if (Number.isNaN(t)) return undefined;
  const margin = systematic === 0 ? (t * sd) / Math.sqrt(n) : t * Math.sqrt(combined);
  return { low: mean - margin, high: mean + margin };
}

/** The true average is outside these limits, on either side, with probability at most 1 − confidence. */
export function meanLimitsTwoSided(sample: Sample, confidence: number): Interval | undefined {
  return meanLimits(sample, (1 + confidence) / 2);
}

/**
 * Judges "the true average lies in `claim`"; see `verdictByLimits` for the rule and `slackOf` for the slack.
 * A single shot decides nothing.
 */
export function meanVerdict(sample: Sample, claim: Interval, confidence: number, slack: number): Decision {
  return verdictByLimits((level) => meanLimits(sample, level), claim, confidence, slack);
}

/**
 * About how many shots in all would decide if average and spread stay as observed: the smallest N ≥ n whose
 * limits do. An estimate, and no invitation to stop there.
 * `undefined` when the average is at a limit, or when more than `most` shots would be needed.
 */
export function meanShotsToDecide(
  sample: Sample,
  claim: Interval,
  confidence: number,
  slack: number,
  most: number = MOST_SHOTS,
): number | undefined {
  const decides = (n: number) => meanVerdict({ ...sample, n }, claim, confidence, slack) !== "undecided";
  // The limits only draw closer with every shot, so what decides once decides ever after.
  return firstThatDecides(sample.n, most, decides);
}
