/**
 * The dispersion ellipse of two metrics: (x − mean)ᵀ S⁻¹ (x − mean) ≤ c, with the covariance S (divisor n − 1).
 *
 * Three ellipses differ in c, and must be told apart: the one that holds a share of the shots if mean and covariance
 * were known, the one that holds the next shot with a probability, and the one that holds the true mean with a
 * confidence. Of few shots the first is too small: the "90 %" ellipse of 10 shots holds the next one 78 times in 100.
 *
 * Statements about ability are about the area of the first one and are exact for normal clouds (Anderson, generalized
 * variance). They bear wild shots no better than a spread does.
 */
import arcTangent from "@stdlib/math-base-special-atan2"; // Math.atan2 may differ between engines
import { allowedError } from "./confidence.ts";
import { chiSquareQuantile, fisherQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import { mean } from "./summary.ts";

/** Where shots are in two metrics, and how they scatter. */
export interface Cloud {
  readonly n: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly varianceX: number;
  readonly varianceY: number;
  readonly covariance: number;
}

/** Half axes in the unit of the metrics, the angle of the long one in radians from x towards y (−π/2 … π/2], and the area. */
export interface Ellipse {
  readonly long: number;
  readonly short: number;
  readonly angle: number;
  readonly area: number;
}

/** What is smaller than this, against what it is a difference of, is rounding: shots on a line, or a round cloud. */
const ROUNDING = 1e-12;

/** The cloud of shots with these coordinates, equally many of both; `undefined` below two shots. O(n). */
export function cloudOf(x: readonly number[], y: readonly number[]): Cloud | undefined {
  const n = x.length;
  const [meanX, meanY] = [mean(x), mean(y)];
  if (meanX === undefined || meanY === undefined || n < 2 || y.length !== n) return undefined;
  const product = (one: readonly number[], a: number, other: readonly number[], b: number) => {
    let total = 0;
    for (let shot = 0; shot < n; shot++)
      total += ((one[shot] ?? Number.NaN) - a) * ((other[shot] ?? Number.NaN) - b);
    return total / (n - 1);
  };
  return {
    n,
    meanX,
    meanY,
    varianceX: product(x, meanX, x, meanX),
    varianceY: product(y, meanY, y, meanY),
    covariance: product(x, meanX, y, meanY),
  };
}

/** The ellipse that would hold this share (0 … 1, excluded) of all shots if mean and covariance were the true ones. */
export function factorForShots(share: number): number {
  return chiSquareQuantile(share, 2);
}

/** The ellipse that holds the next shot with this probability; `undefined` below 3 shots. */
export function factorForNextShot(n: number, probability: number): number | undefined {
  const factor = factorForMean(n, probability);
  return factor === undefined ? undefined : (n + 1) * factor;
}

/** The ellipse that holds the true mean with this confidence; `undefined` below 3 shots. */
export function factorForMean(n: number, confidence: number): number | undefined {
  return n < 3 ? undefined : ((2 * (n - 1)) / (n * (n - 2))) * fisherQuantile(confidence, 2, n - 2);
}

/** The ellipse of a cloud with a factor c. Of two shots, or shots on a line, the short axis and the area are 0; of a round cloud the angle is. */
export function ellipseOf(cloud: Cloud, factor: number): Ellipse {
  const { varianceX, varianceY, covariance } = cloud;
  const half = (varianceX - varianceY) / 2;
  const middle = (varianceX + varianceY) / 2;
  const excess = Math.sqrt(half * half + covariance * covariance);
  const largest = middle + excess;
  const both = varianceX * varianceY;
  const difference = both - covariance * covariance;
  const determinant = cloud.n < 3 || difference <= ROUNDING * both ? 0 : difference;
  return {
    long: Math.sqrt(factor * largest),
    short: largest === 0 ? 0 : Math.sqrt((factor * determinant) / largest),
    angle: excess <= ROUNDING * middle ? 0 : arcTangent(covariance, half) / 2,
    area: Math.PI * factor * Math.sqrt(determinant),
  };
}

/**
 * The area that holds the same share of the player's true shots is below `low`, or above `high`, with probability at
 * most 1 − confidence each: area·2(n − 1)/χ² with the quantiles of 2(n − 2) degrees of freedom.
 * `undefined` below 3 shots (from 6 on it is of use), or for a confidence outside 0.5 … 1.
 *
 * @param area of the ellipse for the shots, with `factorForShots`
 */
export function ellipseAreaLimits(area: number, n: number, confidence: number): Interval | undefined {
  const error = allowedError(confidence);
  if (!(n >= 3) || Number.isNaN(error)) return undefined;
  const limit = (p: number) => (area * 2 * (n - 1)) / chiSquareQuantile(p, 2 * (n - 2));
  return { low: limit(1 - error), high: limit(error) };
}
