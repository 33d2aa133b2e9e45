/**
 * Shots that stand apart from the others: a reason to look at the shot, never an error, and never a reason to change a
 * verdict. Even among shots of one normal law the chance that at least one is flagged is 0.21 with 5 shots and 0.12 with 10.
 */
import { median } from "./summary.ts";

/** Below this many shots nothing is flagged: luck alone flags one too often. */
const FEWEST = 5;

/** A score beyond this, either way, is flagged (Iglewicz & Hoaglin 1993). */
const LARGEST_SCORE = 3.5;

/** The median absolute deviation of normal shots is this share of their standard deviation. */
const MEDIAN_DEVIATION = 0.6745;

/** The standard deviation of normal shots is so many of their mean absolute deviations. */
const MEAN_DEVIATIONS = 1.253314;

/**
 * The modified z-score of each value: 0.6745·(x − median)/MAD, with the median absolute deviation from the median. Where
 * more than half of the values are equal, so that MAD is 0: (x − median)/(1.253314·mean absolute deviation). All 0 where
 * all values are equal. O(n log n).
 */
export function modifiedScores(values: readonly number[]): number[] {
  const centre = median(values) ?? 0;
  const deviations = values.map((value) => Math.abs(value - centre));
  const scale = (median(deviations) ?? 0) / MEDIAN_DEVIATION || MEAN_DEVIATIONS * average(deviations);
  return values.map((value) => (scale === 0 ? 0 : (value - centre) / scale));
}

/** The indices of the values that stand apart; none of fewer than five. */
export function flagged(values: readonly number[]): number[] {
  if (values.length < FEWEST) return [];
  const apart: number[] = [];
  for (const [index, score] of modifiedScores(values).entries()) {
    if (Math.abs(score) > LARGEST_SCORE) apart.push(index);
  }
  return apart;
}

function average(values: readonly number[]): number {
  let total = 0;
  for (const value of values) total += value;
  return values.length === 0 ? 0 : total / values.length;
}
