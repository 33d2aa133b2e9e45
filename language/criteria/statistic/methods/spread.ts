/** Spreads by the chi-square law. */
import {
  limitsWithoutReadings,
  type ReadingUncertainty,
} from "../../../../shared/statistics/reading-uncertainty.ts";
import { firstThatDecides, MOST_SHOTS } from "../../../../shared/statistics/shots-to-decide.ts";
import { spreadLimits } from "../../../../shared/statistics/spread.ts";
import type { Sample } from "../../../../shared/statistics/summary.ts";
import { isDecided, type Method } from "./method.ts";

/** The limits are without what readings scatter by themselves. */
export function spreadMethod(sample: Sample, { random }: ReadingUncertainty): Method {
  const limitsOf = (n: number) => (level: number) => {
    const limits = spreadLimits({ ...sample, n }, level);
    return limits && limitsWithoutReadings(limits, random);
  };
  return {
    limitsAt: limitsOf(sample.n),
    words: () => "chi-square limits, for normally distributed shots",
    fewest: () => 2,
    // The limits only draw closer with every shot, so what decides once decides ever after.
    shotsToDecide: (question) =>
      firstThatDecides(sample.n, MOST_SHOTS, (n) => isDecided(limitsOf(n), question)),
    cautions: [],
  };
}
