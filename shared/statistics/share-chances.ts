/** How likely a statement about a share is to be decided. Exact for a player who hits at the rate that is assumed. */
import { binomialAtLeast, binomialAtMost } from "./binomial.ts";
import type { Chances } from "./chances.ts";
import { criticalCounts } from "./proportion.ts";
import type { Bound } from "./verdict.ts";

/**
 * The chances of "at least (at most) this share" with n shots of a player whose true rate is `rate`. A percentile is a
 * share: "the 90th percentile is at most T" is "at least 90 %", at the rate at which shots are at most T. O(n).
 */
export function shareChances(
  n: number,
  rate: number,
  share: number,
  confidence: number,
  bound: Bound = "at least",
): Chances {
  const { met: fewestAbove, missed: mostBelow } = criticalCounts(n, share, confidence);
  const above = fewestAbove === undefined ? 0 : binomialAtLeast(fewestAbove, n, rate);
  const below = mostBelow === undefined ? 0 : binomialAtMost(mostBelow, n, rate);
  return bound === "at least" ? { met: above, missed: below } : { met: below, missed: above };
}
