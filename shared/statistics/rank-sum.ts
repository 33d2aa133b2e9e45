/**
 * The law of the rank-sum statistic of two blocks (Wilcoxon 1945, Mann & Whitney 1947): how many of the n·m pairs have
 * the shot of the second block above, when all orders are equally likely.
 *
 * The number of orders with u such pairs is the coefficient of qᵘ in Π (1 − qᵐ⁺ⁱ)/(1 − qⁱ), i = 1 … n.
 */
import { allowedError } from "./confidence.ts";
import type { RankLimit } from "./percentile.ts";
import { type CountedLaw, rankByCounting, rankBySeries, type SmoothLaw } from "./rank-law.ts";

/** Up to this many steps, 150 shots in each block or 2,000 against 40, the law is counted. */
const MOST_STEPS = 2_000_000;

/** Which of the n·m differences, from either end, is the limit; `undefined` where the blocks have none. */
export function rankSumLimit(n: number, m: number, confidence: number): RankLimit | undefined {
  const error = allowedError(confidence);
  const [fewer, more] = n < m ? [n, m] : [m, n];
  if (!(fewer >= 1)) return undefined;
  return (fewer * n * m) / 2 <= MOST_STEPS
    ? rankByCounting(counted(fewer, more), error)
    : rankBySeries(smooth(fewer, more), error);
}

/**
 * O(fewer·n·m). Of the differences of the multiplication and the sums of the division only the sums matter: against whole
 * numbers of any size the result is right to 14 digits.
 */
function counted(fewer: number, more: number): CountedLaw {
  const cases = new Float64Array(Math.floor((fewer * more) / 2) + 1);
  cases[0] = 1;
  let total = 1;
  for (let i = 1; i <= fewer; i++) {
    for (let u = cases.length - 1; u >= more + i; u--) cases[u] = at(cases, u) - at(cases, u - more - i);
    for (let u = i; u < cases.length; u++) cases[u] = at(cases, u) + at(cases, u - i);
    total *= (more + i) / i;
  }
  return { cases, total };
}

/** Each factor of the product is a ratio of two even laws on 0 … k − 1: variance (k² − 1)/12, fourth cumulant (1 − k⁴)/120. */
function smooth(fewer: number, more: number): SmoothLaw {
  let fourths = 0;
  for (let i = 1; i <= fewer; i++) {
    const [upper, lower] = [(more + i) * (more + i), i * i];
    fourths += upper * upper - lower * lower;
  }
  const mean = (fewer * more) / 2;
  return { mean, variance: (mean * (fewer + more + 1)) / 6, fourthCumulant: -fourths / 120 };
}

function at(cases: Float64Array, index: number): number {
  return cases[index] ?? 0;
}
