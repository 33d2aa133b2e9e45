/**
 * The binomial distribution: how many of n shots hit when each hits with probability p, independently.
 *
 * Outside the domain (n not a whole number from 0 to `MOST_TRIALS`, p not in 0 … 1) there are no probabilities:
 * an empty list, or NaN.
 */

/** Above this many trials nothing is computed, so that a slip while typing a number cannot stop the editor. */
export const MOST_TRIALS = 100_000;

/**
 * P(X = k) for k = 0 … n.
 *
 * The most likely count gets the weight 1, the others follow from the ratio of neighbours, and the weights are
 * divided by their sum. Only positive numbers are added and multiplied, so nothing cancels, and nothing overflows.
 */
export function binomialProbabilities(n: number, p: number): number[] {
  if (!Number.isInteger(n) || n < 0 || n > MOST_TRIALS || !(p >= 0 && p <= 1)) return [];
  const mode = Math.min(n, Math.floor((n + 1) * p));
  const weights = new Array<number>(n + 1);
  let total = 1;
  weights[mode] = 1;
  for (let k = mode + 1, weight = 1; k <= n; k++) {
    weight *= ((n - k + 1) / k) * (p / (1 - p));
    weights[k] = weight;
    total += weight;
  }
  for (let k = mode - 1, weight = 1; k >= 0; k--) {
    weight *= ((k + 1) / (n - k)) * ((1 - p) / p);
    weights[k] = weight;
    total += weight;
  }
  return weights.map((weight) => weight / total);
}

/** P(X ≤ k). */
export function binomialAtMost(k: number, n: number, p: number): number {
  return sumOf(binomialProbabilities(n, p), (count) => count <= k);
}

/** P(X ≥ k). */
export function binomialAtLeast(k: number, n: number, p: number): number {
  return sumOf(binomialProbabilities(n, p), (count) => count >= k);
}

function sumOf(probabilities: readonly number[], counts: (count: number) => boolean): number {
  if (probabilities.length === 0) return Number.NaN;
  let total = 0;
  for (const [count, probability] of probabilities.entries()) if (counts(count)) total += probability;
  return Math.min(1, total);
}
