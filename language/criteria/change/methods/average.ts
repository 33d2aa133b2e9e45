/** Changes of averages by Welch's t, against the amount claimed. */
import type { ReadingUncertainty } from "../../../../shared/statistics/reading-uncertainty.ts";
import type { Sample } from "../../../../shared/statistics/summary.ts";
import { meanChangeLimits } from "../../../../shared/statistics/welch.ts";
import type { Method } from "../../statistic/methods/method.ts";
import type { Measure } from "../movement.ts";
import { meanRatioLimits } from "./mean-ratio.ts";
import { newShots } from "./new-shots.ts";

/** What the readings of either block share, and whether it is the same for both and so cancels. */
export interface SharedErrors {
  readonly before: Pick<ReadingUncertainty, "systematic">;
  readonly now: Pick<ReadingUncertainty, "systematic">;
  readonly areSame: boolean;
}

/** What is smaller than this, against what it is a difference of, is rounding. */
const ROUNDING = 1e-9;

/** Variance of now − factor·before by what the readings of each block share. */
export function unsharedVariance({ before, now, areSame }: SharedErrors, factor = 1): number {
  const [one, other] = [factor * before.systematic, now.systematic];
  if (!areSame) return one * one + other * other;
  const unshared = other - one;
  return Math.abs(unshared) <= ROUNDING * other ? 0 : unshared * unshared;
}

export function averageChangeMethod(
  before: Sample,
  now: Sample,
  measure: Measure,
  errors: SharedErrors,
): Method {
  const limitsOf = (n: number, m: number) => (level: number) => {
    const [old, fresh] = [
      { ...before, n },
      { ...now, n: m },
    ];
    return measure === "difference"
      ? meanChangeLimits(old, fresh, level, unsharedVariance(errors))
      : meanRatioLimits(old, fresh, level, (factor) => unsharedVariance(errors, factor));
  };
  const blocks = {
    before: before.n,
    now: now.n,
    limitsOf,
    // Welch's degrees of freedom may fall with new shots, but each of a thousand ratios takes long to find.
    drawCloser: measure === "share",
    otherwise: unsharedVariance(errors) > 0 ? INSTRUMENT : undefined,
  };
  return {
    limitsAt: limitsOf(before.n, now.n),
    words: () =>
      `one-sided limits of Welch's t${unsharedVariance(errors) > 0 ? ", with what the readings of both may be off by" : ""}`,
    fewest: () => 2,
    shotsToDecide: (question) => newShots(blocks, question),
    cautions: () => [],
  };
}

const INSTRUMENT =
  "no number of shots decides it: what the readings of either may be off by together is more than the gap";
