/**
 * The distributions that need special functions: the only door to the library that computes them.
 *
 * The library is accurate to the last few digits and computes with basic arithmetic only, so that results are the
 * same to the last bit on every platform. That is why other files here avoid `Math.exp`, `Math.log` and
 * `Math.pow`, which may differ between engines.
 *
 * Outside its domain (a probability beyond 0 … 1, degrees of freedom ≤ 0) every function returns NaN.
 */
import incompleteBeta from "@stdlib/math-base-special-betainc";
import exp from "@stdlib/math-base-special-exp";
import incompleteGamma from "@stdlib/math-base-special-gammainc";
import beta from "@stdlib/stats-base-dists-beta-quantile";
import chiSquare from "@stdlib/stats-base-dists-chisquare-quantile";
import fisher from "@stdlib/stats-base-dists-f-quantile";
import normalLowerTail from "@stdlib/stats-base-dists-normal-cdf";
import normal from "@stdlib/stats-base-dists-normal-quantile";
import studentLowerTail from "@stdlib/stats-base-dists-t-cdf";
import student from "@stdlib/stats-base-dists-t-quantile";
import { chiSquareAt, MANY_DEGREES, normalAt } from "./large-chi-square.ts";

/** From so many degrees of freedom on Student's t is the normal distribution to 13 digits, and the library gives up soon. */
const NEARLY_NORMAL = 1e14;

/** e to the power x. */
export function exponential(x: number): number {
  return exp(x);
}

/** The density of a standard normal variable at z. */
export function normalDensity(z: number): number {
  return exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

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

/** The t with P(T ≤ t) = p. Infinitely many degrees of freedom are the normal distribution. */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  return degreesOfFreedom > NEARLY_NORMAL ? normalQuantile(p) : student(p, degreesOfFreedom);
}

/** The x with P(B ≤ x) = p for a beta variable with shapes a and b. */
export function betaQuantile(p: number, a: number, b: number): number {
  return beta(p, a, b);
}

/** The x with P(χ² ≤ x) = p. */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > MANY_DEGREES) return chiSquareAt(normalQuantile(p), degreesOfFreedom);
  return chiSquare(p, degreesOfFreedom);
}

/** P(χ² ≤ x). */
export function chiSquareCdf(x: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > MANY_DEGREES) return normalCdf(normalAt(x, degreesOfFreedom));
  return x <= 0 ? 0 : incompleteGamma(x / 2, degreesOfFreedom / 2, true, false);
}

/** P(χ² > x), to full precision where `1 - chiSquareCdf(…)` would lose its digits. */
export function chiSquareUpperTail(x: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > MANY_DEGREES) return normalCdf(-normalAt(x, degreesOfFreedom));
  return x <= 0 ? 1 : incompleteGamma(x / 2, degreesOfFreedom / 2, true, true);
}

/** The x with P(F ≤ x) = p for the ratio of two mean squares; `first` and `second` are the degrees of freedom. */
export function fisherQuantile(p: number, first: number, second: number): number {
  return fisher(p, first, second);
}

/** P(F ≤ x). The upper tail is `fisherCdf(1 / x, second, first)`. */
export function fisherCdf(x: number, first: number, second: number): number {
  if (x <= 0) return 0;
  return x === Number.POSITIVE_INFINITY
    ? 1
    : incompleteBeta((first * x) / (first * x + second), first / 2, second / 2);
}
