/**
 * Averaging over an error that all readings of a session share: the systematic part of an instrument's uncertainty. It is
 * the same for every shot, so it must not be treated as independent from shot to shot: that would overstate how sure a
 * count is.
 */
import { normalDensity } from "./distributions.ts";

/** Errors beyond so many standard deviations are left out: two in a thousand million. */
const REACH = 6;

/** How many steps, from end to end, there are at least, are at most to begin with, and come to be at most. */
const FEWEST_STEPS = 40;
const MOST_FIRST_STEPS = 4800;
const MOST_STEPS = 150_000;

/** A probability that changes by more than this in one step is looked at more closely. */
const LARGEST_CHANGE = 0.3;

/** Within so little of 0 or of 1 a probability is certain. */
const CERTAIN = 1e-13;

/**
 * The average of a probability over independent standard normal errors, one for each entry of `ratios`:
 * ∫ probability(z)·φ(z) dz, as a plain sum over equal steps with weights that add up to 1.
 *
 * A step is a quarter of the random error, which smooths the probability, and is halved as long as the probability still
 * jumps, except where it is certain: then the sum is right to 1e-9, or to 1e-7 over many shots. It is right to 1e-4 where there is no random error
 * and the probability does jump, and to 1e-3 where it is a short peak besides.
 *
 * @param ratios for each shared error how large it is against the random error of the same readings (the largest ratio);
 *   an entry of 0 is no error
 * @param probability of the errors in standard deviations, in the order of `ratios`; 0 … 1
 *
 * Calls `probability` 48·ratio times for one error, 41 times at least; for several errors the product of that. With
 * 10,000 shots of great uncertainty a count takes a second or two, with 1,000 a tenth.
 */
export function averageOverShared(
  ratios: readonly number[],
  probability: (errors: readonly number[]) => number,
): number {
  const [ratio, ...others] = ratios;
  if (ratio === undefined) return probability([]);
  const given = (error: number) => averageOverShared(others, (rest) => probability([error, ...rest]));
  return ratio === 0 ? given(0) : averageOver(ratio, given);
}

function averageOver(ratio: number, probability: (error: number) => number): number {
  const steps = Math.min(MOST_FIRST_STEPS, Math.max(FEWEST_STEPS, 8 * REACH * ratio));
  let values = new Float64Array(2 * Math.ceil(steps / 2) + 1);
  for (let index = 0; index < values.length; index++) values[index] = probability(errorAt(index, values));
  while (jumps(values) && values.length <= MOST_STEPS / 2) values = twiceAsFine(values, probability);
  let total = 0;
  let weights = 0;
  for (const [index, value] of values.entries()) {
    const weight = normalDensity(errorAt(index, values));
    total += weight * value;
    weights += weight;
  }
  return total / weights;
}

/** The error that belongs to a value: they are equally spaced from −`REACH` to `REACH`. */
function errorAt(index: number, values: Float64Array): number {
  return (2 * REACH * index) / (values.length - 1) - REACH;
}

function jumps(values: Float64Array): boolean {
  return values.some((value, index) => Math.abs(value - (values[index - 1] ?? value)) > LARGEST_CHANGE);
}

/** With the values half-way between. Between two that are certainly 0, or certainly 1, so is the one half-way. */
function twiceAsFine(
  values: Float64Array,
  probability: (error: number) => number,
): Float64Array<ArrayBuffer> {
  const finer = new Float64Array(2 * values.length - 1);
  for (const [index, value] of values.entries()) {
    const before = values[index - 1];
    finer[2 * index] = value;
    if (before === undefined) continue;
    const middle = 2 * index - 1;
    const isCertain = Math.max(before, value) < CERTAIN || Math.min(before, value) > 1 - CERTAIN;
    finer[middle] = isCertain ? value : probability(errorAt(middle, finer));
  }
  return finer;
}
