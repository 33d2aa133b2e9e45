/**
 * How likely a criterion is to be decided, before anybody hits a ball: for a plan that asks for so many shots, and a player
 * of whom something is assumed. All of it is an estimate.
 */
import { fewestThatDecide, firstThatDecides, MOST_SHOTS } from "./shots-to-decide.ts";

/** The probabilities of the two decisions; what is left is *undecided*. */
export interface Chances {
  readonly met: number;
  readonly missed: number;
}

/**
 * The fewest shots, from `from` on, with which a decision is as likely as `wanted`. `undefined` where `most` do not do.
 *
 * @param chance of the decision with so many shots
 * @param isSteady whether more shots always make it more likely: then about ten numbers of shots are looked at, else all
 *   from the first on. It is not for shares, whose chance rises in saw-teeth.
 */
export function fewestShotsFor(
  wanted: number,
  chance: (shots: number) => number,
  isSteady: boolean,
  from = 2,
  most: number = MOST_SHOTS,
): number | undefined {
  const search = isSteady ? firstThatDecides : fewestThatDecide;
  return search(from, most, (shots) => chance(shots) >= wanted);
}
