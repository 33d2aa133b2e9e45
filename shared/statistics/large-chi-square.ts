/**
 * The chi-square distribution with many degrees of freedom, by the series of Goldberg & Levine (1946, Annals of
 * Mathematical Statistics 17) about the normal distribution. From 1,500 on it is right to 11 digits.
 *
 * The library that computes the distribution otherwise uses a formula beyond χ² = 2,000 that does not hold near the mean:
 * with 2,000 degrees of freedom its probabilities are off by up to 0.02.
 */

/** More degrees of freedom than this are many. */
export const MANY_DEGREES = 1500;

const FARTHEST = 8;
const STEPS = 20;

/** The χ² that is exceeded as often as a standard normal variable exceeds z. */
export function chiSquareAt(z: number, degreesOfFreedom: number): number {
  const root = Math.sqrt(degreesOfFreedom);
  const square = z * z;
  const terms = [
    (2 / 3) * (square - 1),
    ((square - 7) * z) / (9 * Math.SQRT2),
    -((6 * square + 14) * square - 32) / 405,
    (((9 * square + 256) * square - 433) * z) / (4860 * Math.SQRT2),
    (((12 * square - 243) * square - 923) * square + 1472) / 25515,
    -((((3753 * square + 4353) * square - 289517) * square - 289717) * z) / (9185400 * Math.SQRT2),
  ];
  let sum = degreesOfFreedom + root * Math.SQRT2 * z;
  let scale = 1;
  for (const term of terms) {
    sum += term * scale;
    scale /= root;
  }
  return sum;
}

/**
 * The z that belongs to a χ²: the other way round, by steps that halve the distance more than five times each. Beyond eight
 * standard deviations, where the tail is below 1e-15, the end is returned.
 */
export function normalAt(chiSquare: number, degreesOfFreedom: number): number {
  const deviation = Math.sqrt(2 * degreesOfFreedom);
  let z = (chiSquare - degreesOfFreedom) / deviation;
  if (!(Math.abs(z) < FARTHEST)) return z > 0 ? FARTHEST : z < 0 ? -FARTHEST : Number.NaN;
  for (let step = 0; step < STEPS; step++) z -= (chiSquareAt(z, degreesOfFreedom) - chiSquare) / deviation;
  return z;
}
