/**
 * Which readings decide, when every reading may be off by a standard uncertainty u: those inside the limits by a guard
 * band are met, those outside by it are missed, between it is undecided (JCGM 106, acceptance intervals).
 */
import { allowedError } from "./confidence.ts";
import { bestConformance, conformanceProbability } from "./conformance.ts";
import { normalQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";

/** The guard band at one limit: z·u. Against a range it is right as long as u is small beside the width. */
export function guardBand(uncertainty: number, level: number): number {
  return normalQuantile(1 - allowedError(level)) * uncertainty;
}

export interface DecidingReadings {
  /** Readings in here are met; `undefined` where no reading is. */
  readonly met: Interval | undefined;
  /** Readings outside of this are missed; `undefined` where every reading is. */
  readonly notMissed: Interval | undefined;
}

/**
 * Exactly where the conformance probability of a reading reaches the level, and where it falls to 1 − level. Some sixty
 * probabilities for a range.
 */
export function decidingReadings(uncertainty: number, claim: Interval, level: number): DecidingReadings {
  const error = allowedError(level);
  const { low, high } = claim;
  if (!Number.isFinite(low) || !Number.isFinite(high)) {
    const band = guardBand(uncertainty, level);
    return {
      met: { low: low + band, high: high - band },
      notMissed: { low: low - band, high: high + band },
    };
  }
  return {
    met: around(uncertainty, claim, 1 - error),
    notMissed: around(uncertainty, claim, error),
  };
}

/** The readings whose conformance probability is at least this; `undefined` where it is for none. */
function around(uncertainty: number, claim: Interval, probability: number): Interval | undefined {
  if (!(bestConformance(uncertainty, claim) >= probability)) return undefined;
  const middle = (claim.low + claim.high) / 2;
  // The probability falls from the middle outwards; it is below one half beyond the limit and gone after 40 u.
  let inside = 0;
  let outside = claim.high - middle + 40 * uncertainty;
  for (;;) {
    const distance = (inside + outside) / 2;
    if (distance <= inside || distance >= outside) return { low: middle - inside, high: middle + inside };
    if (conformanceProbability(middle + distance, uncertainty, claim, 0) >= probability) inside = distance;
    else outside = distance;
  }
}
