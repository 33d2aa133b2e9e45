/**
 * Whether shots follow one another instead of being independent: statements about ability are then less sure than they
 * say. It can hardly be seen in few shots, so these are cautions and never corrections.
 */
import { studentQuantile } from "./distributions.ts";
import { mean } from "./summary.ts";

/** Below this many shots nothing is said. */
const FEWEST = 10;

/** A slope is clear when it is this sure to be none by chance, up or down. */
const SURE = 0.95;

export interface OrderOfShots {
  /** How alike neighbours are, −1 … 1. */
  readonly autocorrelation: number;
  /** Neighbours are more alike, or more unlike, than those of independent shots. */
  readonly followsOn: boolean;
  /** Change from one shot to the next, of the line through the shots in order. */
  readonly slope: number;
  /** The line clearly rises or falls. */
  readonly drifts: boolean;
}

/**
 * What the order in which the shots were hit shows; `undefined` below ten shots, or when all are equal. O(n).
 *
 * Of independent shots the autocorrelation averages about −1/n, so the caution is for |r₁ + 1/n| > 2/√n. The slope is
 * clear by Student's t of the line, at 95 %.
 */
export function orderOfShots(values: readonly number[]): OrderOfShots | undefined {
  const n = values.length;
  const autocorrelation = lag1Autocorrelation(values);
  if (n < FEWEST || autocorrelation === undefined) return undefined;
  const { slope, standardError } = lineThrough(values);
  return {
    autocorrelation,
    followsOn: Math.abs(autocorrelation + 1 / n) > 2 / Math.sqrt(n),
    slope,
    drifts: Math.abs(slope) > studentQuantile((1 + SURE) / 2, n - 2) * standardError,
  };
}

/** r₁ = Σ (xᵢ − x̄)(xᵢ₊₁ − x̄)/Σ (xᵢ − x̄)², in order of hitting; `undefined` where all values are equal. */
export function lag1Autocorrelation(values: readonly number[]): number | undefined {
  const centre = mean(values) ?? 0;
  let squares = 0;
  let neighbours = 0;
  for (const [index, value] of values.entries()) {
    squares += (value - centre) * (value - centre);
    neighbours += (value - centre) * ((values[index + 1] ?? centre) - centre);
  }
  return squares === 0 ? undefined : neighbours / squares;
}

/**
 * How many independent shots say as much about the average as n shots of which each resembles the last by `correlation`:
 * n/(1 + 2Σ (1 − k/n)ρᵏ), k = 1 … n − 1. O(n).
 */
export function worthInIndependentShots(n: number, correlation: number): number {
  let sum = 0;
  for (let k = 1, power = correlation; k < n; k++, power *= correlation) sum += (1 - k / n) * power;
  return n / (1 + 2 * sum);
}

/** Least squares of the values over 0 … n − 1. */
function lineThrough(values: readonly number[]): { readonly slope: number; readonly standardError: number } {
  const n = values.length;
  const centre = mean(values) ?? 0;
  const middle = (n - 1) / 2;
  const spread = (n * (n * n - 1)) / 12;
  let together = 0;
  for (const [index, value] of values.entries()) together += (index - middle) * (value - centre);
  const slope = together / spread;
  let squares = 0;
  for (const [index, value] of values.entries()) {
    const residual = value - centre - slope * (index - middle);
    squares += residual * residual;
  }
  return { slope, standardError: Math.sqrt(squares / (n - 2) / spread) };
}
