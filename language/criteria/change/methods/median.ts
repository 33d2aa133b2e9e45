/** Changes of medians by the shift of Hodges and Lehmann: by ranks, whatever the shape of the shots. */
import { shiftLimits } from "../../../../shared/statistics/hodges-lehmann.ts";
import { rankSumLimit } from "../../../../shared/statistics/rank-sum.ts";
import {
  fewestThatDecide,
  firstThatDecides,
  MOST_SHOTS,
} from "../../../../shared/statistics/shots-to-decide.ts";
import { isDecided, type Method } from "../../statistic/methods/method.ts";
import { percent } from "../../wording.ts";

export function medianChangeMethod(before: readonly number[], now: readonly number[]): Method {
  const repeated = (times: number) => Array.from({ length: times }, () => now).flat();
  const limitsOf = (times: number) => (level: number) => shiftLimits(before, repeated(times), level);
  return {
    limitsAt: limitsOf(1),
    words: (level) => {
      const reached = rankSumLimit(before.length, now.length, level)?.reached;
      return `limits of the Hodges–Lehmann shift by ranks${reached === undefined ? "" : `, which reach ${percent(Math.floor(reached * 1000) / 1000)}`}`;
    },
    fewest: ({ confidence }) =>
      fewestThatDecide(1, MOST_SHOTS, (n) => rankSumLimit(before.length, n, confidence) !== undefined),
    // Going on as observed is hitting the same shots again.
    shotsToDecide: (question) => {
      const most = Math.floor(MOST_SHOTS / now.length);
      const times = firstThatDecides(1, most, (number) => isDecided(limitsOf(number), question));
      return times === undefined ? undefined : times * now.length;
    },
    cautions: () => [SAME_SHAPE],
  };
}

const SAME_SHAPE = "The shift takes the shots of both for scattered alike, about another middle.";
