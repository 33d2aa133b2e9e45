/**
 * Averaging over several errors that all shots of a session share. One is averaged over by equal steps
 * (`shared/statistics/shared-error.ts`); for several the steps would multiply, so a fixed set of points is taken that fills
 * the space evenly: a lattice (Korobov 1959) of sizes, each with every choice of signs. So readings of which some change
 * their sign in a mirror, and others do not, have the same average as before.
 */
import { normalQuantile } from "../../shared/statistics/distributions.ts";
import { averageOverShared } from "../../shared/statistics/shared-error.ts";

/** So many points, and the number whose powers generate their places; both fixed, so that results are the same each time. */
const POINTS = 127;
const GENERATOR = 103;

/**
 * The average of a probability over independent standard normal errors.
 *
 * @param ratios how large each error is against the random errors
 * @param probability of the errors in standard deviations, in the order of `ratios`; 0 … 1
 *
 * To 1e-7 for one error, and to about 0.001 for two or three, with 127 calls for each choice of signs.
 */
export function averageOverErrors(
  ratios: readonly number[],
  probability: (errors: readonly number[]) => number,
): number {
  if (ratios.length <= 1) return averageOverShared(ratios, probability);
  let total = 0;
  const points = latticeOf(ratios.length);
  for (const errors of points) total += probability(errors);
  return total / points.length;
}

const lattices = new Map<number, readonly (readonly number[])[]>();

/** The points with that many coordinates, as standard normal errors. */
function latticeOf(dimensions: number): readonly (readonly number[])[] {
  let points = lattices.get(dimensions);
  if (points === undefined) {
    const sizes = Array.from({ length: POINTS }, (_, place) =>
      normalQuantile(0.5 + (place + 0.5) / (2 * POINTS)),
    );
    points = Array.from({ length: POINTS }, (_, point) => {
      let place = point;
      return Array.from({ length: dimensions }, () => {
        const size = sizes[place] ?? 0;
        place = (place * GENERATOR) % POINTS;
        return size;
      });
    }).flatMap(withEverySign);
    lattices.set(dimensions, points);
  }
  return points;
}

function withEverySign(sizes: readonly number[]): number[][] {
  return sizes.reduce<number[][]>(
    (points, size) =>
      points.flatMap((point) => [
        [...point, size],
        [...point, -size],
      ]),
    [[]],
  );
}
