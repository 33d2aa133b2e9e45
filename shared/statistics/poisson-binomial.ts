/**
 * How many shots hit when each hits with a probability of its own, independently: the Poisson-binomial distribution.
 *
 * A probability outside 0 … 1, or none, gives NaN.
 */

/** Counts less likely than this are dropped on the way: with 10,000 shots they cannot add up to 1e-15. */
const NEGLIGIBLE = 1e-22;

/**
 * P(K = k) for k = 0 … n. Shot after shot, by addition and multiplication of positive numbers only. O(n·√n): of n counts
 * only about 20 standard deviations are likely enough to be kept; 10,000 shots take some hundredths of a second.
 */
export function hitCountProbabilities(chances: readonly number[]): Float64Array {
  const law = new Float64Array(chances.length + 1);
  if (!chances.every(isProbability)) return law.fill(Number.NaN);
  law[0] = 1;
  let low = 0;
  let high = 0;
  for (const chance of chances) {
    high++;
    for (let k = high; k > low; k--) law[k] = at(law, k) * (1 - chance) + at(law, k - 1) * chance;
    law[low] = at(law, low) * (1 - chance);
    while (high > low && at(law, high) < NEGLIGIBLE) law[high--] = 0;
    while (low < high && at(law, low) < NEGLIGIBLE) law[low++] = 0;
  }
  return law;
}

/** P(K ≥ k). */
export function atLeastHits(chances: readonly number[], k: number): number {
  return certainty(chances, k) ?? sum(hitCountProbabilities(chances), Math.max(0, k), chances.length);
}

/**
 * 1 or 0 where k is so far from the mean of the count that the chance of being on its other side is below 1e-17, by
 * Bernstein's inequality: P(K − mean ≥ t) ≤ exp(−t²/2/(variance + t/3)). O(n).
 */
function certainty(chances: readonly number[], k: number): 0 | 1 | undefined {
  let mean = 0;
  let variance = 0;
  for (const chance of chances) {
    if (!isProbability(chance)) return undefined;
    mean += chance;
    variance += chance * (1 - chance);
  }
  const distance = Math.abs(k - mean);
  const isCertain = distance * distance > 80 * (variance + distance / 3);
  if (!isCertain) return undefined;
  return mean > k ? 1 : 0;
}

function isProbability(chance: number): boolean {
  return chance >= 0 && chance <= 1;
}

function sum(law: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let k = from; k <= to; k++) total += at(law, k);
  return Math.min(1, total);
}

function at(law: Float64Array, k: number): number {
  return law[k] ?? 0;
}
