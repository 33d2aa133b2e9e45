/**
 * Which of the ordered averages, or differences, is a confidence limit: the K-th from either end, with the largest K for
 * which a rank statistic is below K with probability at most 1 − confidence.
 *
 * A rank statistic takes whole values from 0 on and is symmetric about its mean. Its law is counted exactly for few shots
 * and taken from an Edgeworth series for many, where the two agree to about 1e-5.
 */
import { keepsError } from "./confidence.ts";
import { normalCdf, normalDensity, normalQuantile } from "./distributions.ts";
import type { RankLimit } from "./percentile.ts";

/** The exact law: how many of `total` equally likely cases give the statistic the value of the index, up to its mean. */
export interface CountedLaw {
  readonly cases: ArrayLike<number>;
  readonly total: number;
}

/** The law of many shots: the statistic's mean, variance and fourth cumulant. */
export interface SmoothLaw {
  readonly mean: number;
  readonly variance: number;
  readonly fourthCumulant: number;
}

/** O(length). `undefined` where even the first from the end exceeds the error. */
export function rankByCounting({ cases, total }: CountedLaw, error: number): RankLimit | undefined {
  let limit: RankLimit | undefined;
  for (let value = 0, cumulated = 0; value < cases.length; value++) {
    cumulated += cases[value] ?? 0;
    const below = cumulated / total;
    if (!keepsError(below, error)) return limit;
    limit = { rank: value + 1, reached: 1 - below };
  }
  return limit;
}

/** Starts where the normal law has the rank and steps to where the series has it. */
export function rankBySeries(law: SmoothLaw, error: number): RankLimit | undefined {
  const start = law.mean + normalQuantile(error) * Math.sqrt(law.variance);
  if (Number.isNaN(start)) return undefined;
  let value = Math.floor(start);
  while (keepsError(atMost(value + 1, law), error) && value + 1 < law.mean) value++;
  while (value >= 0 && !keepsError(atMost(value, law), error)) value--;
  return value < 0 ? undefined : { rank: value + 1, reached: 1 - atMost(value, law) };
}

/** P(statistic ≤ value) with half a step of continuity and the term of the fourth cumulant; the third is zero. */
function atMost(value: number, { mean, variance, fourthCumulant }: SmoothLaw): number {
  const z = (value + 0.5 - mean) / Math.sqrt(variance);
  const excess = fourthCumulant / (variance * variance);
  return normalCdf(z) - (normalDensity(z) * excess * (z * z * z - 3 * z)) / 24;
}
