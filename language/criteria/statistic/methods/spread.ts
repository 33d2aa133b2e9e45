/** Spreads by the chi-square law. */
import { bonettLimits } from "../../../../shared/statistics/bonett.ts";
import type { Interval } from "../../../../shared/statistics/interval.ts";
import { looksNormal } from "../../../../shared/statistics/looks-normal.ts";
import {
  limitsWithoutReadings,
  type ReadingUncertainty,
} from "../../../../shared/statistics/reading-uncertainty.ts";
import { firstThatDecides, MOST_SHOTS } from "../../../../shared/statistics/shots-to-decide.ts";
import { spreadLimits } from "../../../../shared/statistics/spread.ts";
import { sampleOf } from "../../../../shared/statistics/summary.ts";
import { isDecided, type Method } from "./method.ts";

/**
 * The limits are without what readings scatter by themselves. They rely on shots that are normally distributed: where the
 * shots do not look it, that is said, with sturdier limits beside.
 *
 * @param write limits in words
 */
export function spreadMethod(
  values: readonly number[],
  { random }: ReadingUncertainty,
  write: (limits: Interval) => string,
): Method {
  const sample = { n: values.length, sd: sampleOf(values)?.sd };
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
    cautions: (level) => {
      const sturdier = bonettLimits(values, level);
      return normalityCautions(values, sturdier && write(limitsWithoutReadings(sturdier, random)));
    },
  };
}

/** @param sturdier limits in words, where there are any */
export function normalityCautions(values: readonly number[], sturdier: string | undefined): string[] {
  const isNormal = looksNormal(values);
  const isEqual = sampleOf(values)?.sd === 0;
  if (isNormal || isEqual) return [];
  if (isNormal === undefined) return [TOO_FEW_TO_SEE];
  return [NOT_NORMAL + (sturdier === undefined ? "" : ` Sturdier limits (Bonett): ${sturdier}.`)];
}

const TOO_FEW_TO_SEE =
  "The limits rely on shots that are normally distributed, which cannot be seen in fewer than 5 shots.";

const NOT_NORMAL =
  "The shots do not look normally distributed: these limits then promise too much, and more shots do not help. A percentile or a middle span relies on no such shape.";
