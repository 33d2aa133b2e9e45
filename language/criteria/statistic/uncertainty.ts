/** How far the readings that a number is made of may be off. */
import type { ReadingUncertainty } from "../../../shared/statistics/reading-uncertainty.ts";
import type { CountedShots } from "../criterion.ts";

/**
 * The uncertainty of one reading among these shots: the root of the mean square of the random parts, and the mean of the
 * parts that all readings share. Null where the readings are taken as exact. O(n).
 */
export function uncertaintyOf(
  metric: string,
  indices: readonly number[],
  shots: CountedShots,
): ReadingUncertainty | null {
  const uncertainties = shots.uncertainty(metric);
  if (uncertainties === null || indices.length === 0) return null;
  let squares = 0;
  let shared = 0;
  for (const index of indices) {
    const { random, systematic } = uncertainties[index] ?? EXACT;
    squares += random * random;
    shared += systematic;
  }
  const n = indices.length;
  return squares === 0 && shared === 0 ? null : { random: Math.sqrt(squares / n), systematic: shared / n };
}

export const EXACT: ReadingUncertainty = { random: 0, systematic: 0 };

/** Says that a number leaves the uncertainty of its readings out. `number` is what it is called: `median`. */
export function notInTheNumber(number: string, metrics: string): string {
  return `How far readings of ${metrics} may be off is not in the ${number}: it is judged as if they were exact.`;
}
