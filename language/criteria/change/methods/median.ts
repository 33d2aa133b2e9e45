/** Changes of medians by the shift of Hodges and Lehmann: by ranks, whatever the shape of the shots. */
import { shiftLimits } from "../../../../shared/statistics/hodges-lehmann.ts";
import { rankSumLimit } from "../../../../shared/statistics/rank-sum.ts";
import { fewestThatDecide, MOST_SHOTS } from "../../../../shared/statistics/shots-to-decide.ts";
import { byHittingAgain, type Method } from "../../statistic/methods/method.ts";
import { percent } from "../../wording.ts";

export function medianChangeMethod(before: readonly number[], now: readonly number[]): Method {
  const limitsOf = (after: readonly number[]) => (level: number) => shiftLimits(before, after, level);
  return {
    limitsAt: limitsOf(now),
    words: (level) => {
      const reached = rankSumLimit(before.length, now.length, level)?.reached;
      return `limits of the Hodges–Lehmann shift by ranks${reached === undefined ? "" : `, which reach ${percent(Math.floor(reached * 1000) / 1000)}`}`;
    },
    fewest: ({ confidence }) =>
      fewestThatDecide(1, MOST_SHOTS, (n) => rankSumLimit(before.length, n, confidence) !== undefined),
    shotsToDecide: byHittingAgain(now, limitsOf),
    cautions: () => [SAME_SHAPE],
  };
}

const SAME_SHAPE = "The shift takes the shots of both for scattered alike, about another middle.";
