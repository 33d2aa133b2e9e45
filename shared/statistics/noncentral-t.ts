/**
 * The noncentral t distribution: of (Z + δ)/S with a normal Z and S = χ/√ν. It tells how likely a test of an average is to
 * decide, and where a percentile of a normal law may lie.
 */
import { normalCdf } from "./distributions.ts";
import { averageOverSpread } from "./spread-law.ts";

/** P(T ≤ t) = the average of Φ(t·S − δ) over S. The degrees of freedom need not be whole. Right to 1e-10. */
export function noncentralCdf(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const steepness = Math.min(Math.abs(noncentrality), 9 * Math.abs(t));
  return averageOverSpread(degreesOfFreedom, steepness, (s) => normalCdf(t * s - noncentrality));
}

/**
 * The t with P(T ≤ t) = p, by halving: some sixty to a hundred values of the distribution, a few milliseconds. NaN for a p
 * outside 0 … 1 (excluded), degrees of freedom below one half, or a noncentrality without end.
 */
export function noncentralQuantile(p: number, degreesOfFreedom: number, noncentrality: number): number {
  const isBelow = (t: number) => noncentralCdf(t, degreesOfFreedom, noncentrality) < p;
  const isLaw = Number.isFinite(noncentralCdf(0, degreesOfFreedom, noncentrality));
  if (!(p > 0 && p < 1 && isLaw && Number.isFinite(noncentrality))) return Number.NaN;
  let low = noncentrality - 1;
  let high = noncentrality + 1;
  for (let reach = 2; !isBelow(low); reach *= 2) low = noncentrality - reach;
  for (let reach = 2; isBelow(high); reach *= 2) high = noncentrality + reach;
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high || high - low < 1e-13 * Math.max(0.001, Math.abs(middle)))
      return middle;
    if (isBelow(middle)) low = middle;
    else high = middle;
  }
}
