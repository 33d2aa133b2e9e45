/**
 * The distributions that need special functions: the only door to the library that computes them.
 *
 * The library is accurate to the last few digits and computes with basic arithmetic only, so that results are the
 * same to the last bit on every platform. That is why other files here avoid `Math.exp`, `Math.log` and
 * `Math.pow`, which may differ between engines.
 *
 * Outside its domain (a probability beyond 0 … 1, degrees of freedom ≤ 0) every function returns NaN.
 */
import beta from "@stdlib/stats-base-dists-beta-quantile";
import chiSquare from "@stdlib/stats-base-dists-chisquare-quantile";
import normalLowerTail from "@stdlib/stats-base-dists-normal-cdf";
import normal from "@stdlib/stats-base-dists-normal-quantile";
import studentLowerTail from "@stdlib/stats-base-dists-t-cdf";
import student from "@stdlib/stats-base-dists-t-quantile";

/** P(Z ≤ z) for a standard normal Z. The upper tail is `normalCdf(-z)`. */
export function normalCdf(z: number): number {
  return normalLowerTail(z, 0, 1);
}

/** The z with P(Z ≤ z) = p. */
export function normalQuantile(p: number): number {
  return normal(p, 0, 1);
}

/** P(T ≤ t) for Student's t; the degrees of freedom need not be whole. The upper tail is `studentCdf(-t, …)`. */
export function studentCdf(t: number, degreesOfFreedom: number): number {
  return studentLowerTail(t, degreesOfFreedom);
}

/** The t with P(T ≤ t) = p. */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  return student(p, degreesOfFreedom);
}

/** The x with P(B ≤ x) = p for a beta variable with shapes a and b. */
export function betaQuantile(p: number, a: number, b: number): number {
  return beta(p, a, b);
}

/** The x with P(χ² ≤ x) = p. */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  return chiSquare(p, degreesOfFreedom);
}
