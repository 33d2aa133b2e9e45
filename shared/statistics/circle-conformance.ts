/**
 * Whether a shot landed in a circle when its place is known with the same standard uncertainty on both axes: the
 * noncentral chi-square law with two degrees of freedom.
 */
import { normalCdf } from "./distributions.ts";

/** From so many times the uncertainty on, a circle is nearly straight beside it. */
const STRAIGHT = 3000;

/** Poisson weights smaller than this, against the largest, are left out. */
const NEGLIGIBLE = 1e-20;

/**
 * P(the true place lies in the circle). `distance` is that of the reading from the centre, in the unit of the others.
 *
 * With V ~ Poisson(radius²/2u²) and W ~ Poisson(distance²/2u²) it is P(V > W), which needs only the ratios of neighbouring
 * weights: basic arithmetic, nothing cancels. O(radius/u). Beyond 3000 u the boundary is taken as straight, which is right
 * to 1e-6. An exact reading (u = 0) has 1 or 0.
 */
export function circleConformance(
  distance: number,
  radius: number,
  uncertainty: number,
  slack: number,
): number {
  if (uncertainty === 0) return distance <= radius + slack ? 1 : 0;
  if (!(uncertainty > 0 && distance >= 0 && radius >= 0)) return Number.NaN;
  const [r, d] = [radius / uncertainty, distance / uncertainty];
  if (Number.isNaN(r) || Number.isNaN(d)) return Number.NaN;
  // An error across the radius carries the place outwards, by 1/2d on average.
  if (Math.max(r, d) > STRAIGHT) return normalCdf(r - d - 0.5 / Math.max(r, d));
  const inside = poisson((r * r) / 2);
  const outside = poisson((d * d) / 2);
  let probability = 0;
  let above = 0; // P(V > W's value), from the far end down
  let next = inside.first + inside.weights.length - 1;
  for (let index = outside.weights.length - 1; index >= 0; index--) {
    const value = outside.first + index;
    for (; next > value && next >= inside.first; next--) above += inside.weights[next - inside.first] ?? 0;
    probability += (outside.weights[index] ?? 0) * above;
  }
  return Math.min(1, probability);
}

/** The probabilities of a Poisson variable around its mean: those of the counts from `first` on. */
function poisson(mean: number): { readonly first: number; readonly weights: readonly number[] } {
  const mode = Math.floor(mean);
  const lower: number[] = [];
  for (let count = mode, weight = 1; count > 0; count--) {
    weight *= count / mean;
    if (weight < NEGLIGIBLE) break;
    lower.push(weight);
  }
  const upper: number[] = [];
  for (let count = mode + 1, weight = 1; ; count++) {
    weight *= mean / count;
    if (weight < NEGLIGIBLE) break;
    upper.push(weight);
  }
  const weights = [...lower.reverse(), 1, ...upper];
  let total = 0;
  for (const weight of weights) total += weight;
  return { first: mode - lower.length, weights: weights.map((weight) => weight / total) };
}
