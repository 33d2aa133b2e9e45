/** How the standard deviation seen in normal shots scatters about the true one: χ/√ν with ν = n − 1. */
import { exponential } from "./distributions.ts";

/** Weights smaller than this, against the largest, are left out. */
const NEGLIGIBLE = 1e-17;

/** Two shots have one degree of freedom; with much less the law has no end. */
const FEWEST_DEGREES = 0.5;

/** What is steeper is a step, as far as a chance is concerned. */
const STEEPEST = 10_000;

/** With more degrees of freedom the observed spread is the true one, to 1e-8. */
const NO_SCATTER = 1e8;

/**
 * The average of a function of s/σ, the observed standard deviation over the true one, with ν degrees of freedom.
 *
 * A plain sum over equal steps of ln(s/σ), with weights exp(ν·(y − (e²ʸ − 1)/2)) that are divided by their sum. Both fall
 * off fast on either side, so the sum is right to 1e-10 as long as a step is small against the law and the function.
 *
 * @param steepness how fast the function changes with ln(s/σ) where it changes fastest, for a function from 0 to 1
 *
 * O(steepness), some fifty calls of the function at least. NaN below half a degree of freedom.
 */
export function averageOverSpread(
  degreesOfFreedom: number,
  steepness: number,
  value: (ratio: number) => number,
): number {
  if (!(degreesOfFreedom >= FEWEST_DEGREES)) return Number.NaN;
  if (degreesOfFreedom > NO_SCATTER) return value(1);
  const step = Math.min(
    0.15,
    0.4 / Math.sqrt(2 * degreesOfFreedom),
    0.4 / (1 + Math.min(steepness, STEEPEST)),
  );
  let total = value(1);
  let weights = 1;
  for (const direction of [step, -step]) {
    for (let index = 1; ; index++) {
      const ratio = exponential(index * direction);
      const weight = exponential(degreesOfFreedom * (index * direction - (ratio * ratio - 1) / 2));
      if (!(weight > NEGLIGIBLE)) break;
      total += weight * value(ratio);
      weights += weight;
    }
  }
  return total / weights;
}
