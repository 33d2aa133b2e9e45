/**
 * Averaging over several errors that all shots of a session share. One is averaged over by equal steps
 * (`shared/statistics/shared-error.ts`); for several the steps would multiply, so a fixed set of points is taken that fills
 * the space evenly: a lattice (Korobov 1959), each point together with its opposite, so that mirror images agree.
 */
import { normalQuantile } from "../../shared/statistics/distributions.ts";
import { averageOverShared } from "../../shared/statistics/shared-error.ts";

/** So many points, and the number whose powers generate their places; both fixed, so that results are the same each time. */
const POINTS = 251;
const GENERATOR = 55;

/**
 * The average of a probability over independent standard normal errors.
 *
 * @param ratios how large each error is against the random errors
 * @param probability of the errors in standard deviations, in the order of `ratios`; 0 … 1
 *
 * To 1e-7 for one error, and to about 0.002 for several, with 502 calls whatever their number.
 */
export function averageOverErrors(
  ratios: readonly number[],
  probability: (errors: readonly number[]) => number,
): number {
  if (ratios.length <= 1) return averageOverShared(ratios, probability);
  let total = 0;
  for (const errors of latticeOf(ratios.length)) {
    total += probability(errors) + probability(errors.map((error) => -error));
  }
  return total / (2 * POINTS);
}

const lattices = new Map<number, readonly (readonly number[])[]>();

/** The points with that many coordinates, as standard normal errors. */
function latticeOf(dimensions: number): readonly (readonly number[])[] {
  let points = lattices.get(dimensions);
  if (points === undefined) {
    const normal = Array.from({ length: POINTS }, (_, place) => normalQuantile((place + 0.5) / POINTS));
    points = Array.from({ length: POINTS }, (_, point) => {
      let place = point;
      return Array.from({ length: dimensions }, () => {
        const error = normal[place] ?? 0;
        place = (place * GENERATOR) % POINTS;
        return error;
      });
    });
    lattices.set(dimensions, points);
  }
  return points;
}
