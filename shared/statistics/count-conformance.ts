/**
 * Counts over the shots hit when readings may be off: how probable it is that at least k of them lie within limits, and
 * the verdict that follows.
 */

import { conformanceProbability, verdictByProbability } from "./conformance.ts";
import type { Interval } from "./interval.ts";
import { atLeastHits } from "./poisson-binomial.ts";
import type { ReadingUncertainty } from "./reading-uncertainty.ts";
import { averageOverShared } from "./shared-error.ts";
import type { Decision } from "./verdict.ts";

/**
 * P(at least `needed` of the true values lie in `claim`). The random parts are independent, so the count is
 * Poisson-binomial; the systematic part is shared, so it is averaged over.
 *
 * This is the case of one metric and one range. Where shots are judged by several metrics, or readings differ in their
 * uncertainty, put `averageOverShared` and `atLeastHits` together in the same way.
 */
export function countConformance(
  readings: readonly number[],
  { random, systematic }: ReadingUncertainty,
  claim: Interval,
  needed: number,
  slack: number,
): number {
  return averageOverShared([systematic === 0 ? 0 : systematic / random], ([error = 0]) => {
    const shift = error * systematic;
    const chances = readings.map((reading) => conformanceProbability(reading - shift, random, claim, slack));
    return atLeastHits(chances, needed);
  });
}

/**
 * The verdict on "at least `needed` shots" when `open` more are unknown or still to come: met with all of them missed, or
 * missed with all of them hit.
 *
 * @param atLeast P(at least k of the shots with a reading conform)
 * @param level how probable it must be
 */
export function countVerdictByProbability(
  atLeast: (k: number) => number,
  needed: number,
  open: number,
  level: number,
): Decision {
  if (verdictByProbability(atLeast(needed), level) === "met") return "met";
  return verdictByProbability(atLeast(needed - open), level) === "missed" ? "missed" : "undecided";
}
