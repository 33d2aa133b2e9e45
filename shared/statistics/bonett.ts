/**
 * Limits for a player's true spread that bear shots with heavy tails better than the chi-square limits do
 * (Bonett 2006, Computational Statistics & Data Analysis 50, 775–782).
 *
 * The excess of wild shots is estimated from the shots themselves, about a trimmed mean. That repairs the side of
 * *missed*, and only a part of the side of *met*: no method rescues a standard deviation from rare wild shots.
 */
import { allowedError } from "./confidence.ts";
import { exponential, normalQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import { ascending, mean, sampleOf } from "./summary.ts";

/**
 * The true standard deviation is below `low`, or above `high`, with probability about 1 − confidence each:
 * ln limits of the variance = ln(c·sd²) ∓ z·e with c = n/(n − z) and e = c·√((γ − (n − 3)/n)/(n − 1)), where γ is the
 * kurtosis about the trimmed mean. O(n log n).
 * `undefined` below 4 shots, for equal readings, or for a confidence outside 0.5 … 1 or so near to 1 that z ≥ n.
 */
export function bonettLimits(values: readonly number[], confidence: number): Interval | undefined {
  const sample = sampleOf(values);
  const z = normalQuantile(1 - allowedError(confidence));
  if (sample?.sd === undefined || sample.sd === 0 || sample.n < 4 || !(z < sample.n)) return undefined;
  const { n, sd } = sample;
  const c = n / (n - z);
  const error = c * Math.sqrt((trimmedKurtosis(values, (n - 1) * sd * sd) - (n - 3) / n) / (n - 1));
  const centre = sd * Math.sqrt(c);
  return { low: centre * exponential((-z * error) / 2), high: centre * exponential((z * error) / 2) };
}

/** n·Σ(x − m)⁴/(Σ(x − mean)²)² about the mean m that is left after trimming 1/(2√(n − 4)) of the shots off each end. */
function trimmedKurtosis(values: readonly number[], squares: number): number {
  const n = values.length;
  const share = Math.min(1 / 2, 1 / (2 * Math.sqrt(n - 4)));
  const trimmed = Math.min(Math.floor(n * share), Math.ceil(n / 2) - 1); // at most down to the median
  const centre = mean(ascending(values).slice(trimmed, n - trimmed)) ?? Number.NaN;
  let fourths = 0;
  for (const value of values) {
    const square = (value - centre) * (value - centre);
    fourths += square * square;
  }
  return (n * fourths) / (squares * squares);
}
