/** A statistic of the shots hit: the number itself is held against its limits, as far as the readings are to be trusted. */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import { conformanceProbability, verdictByProbability } from "../../../shared/statistics/conformance.ts";
import { guardBand } from "../../../shared/statistics/guard-band.ts";
import { isInside } from "../../../shared/statistics/interval.ts";
import {
  type ReadingUncertainty,
  uncertaintyOfMean,
} from "../../../shared/statistics/reading-uncertainty.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { percent, roundedPercent } from "../wording.ts";
import { rangeInWords, scaleOf } from "./value.ts";

type Judged = Pick<Outcome, "verdict" | "interval" | "settles">;

/** Judges the number over all planned shots. An average of uncertain readings by its guard band, others as they are. */
export function judgeShotsHit(
  criterion: StatisticCriterion,
  value: number,
  used: number,
  uncertainty: ReadingUncertainty | null,
  shots: CountedShots,
): Judged {
  const { interval: claim, slack } = claimOf(criterion.bounds, shots.hand);
  if (uncertainty === null || criterion.statistic.kind !== "average") {
    return { verdict: isInside(value, claim, slack) ? "met" : "missed", interval: null, settles: null };
  }
  const { decisionLevel } = shots;
  const ofMean = uncertaintyOfMean(used, uncertainty);
  const probability = conformanceProbability(value, ofMean, claim, slack);
  const verdict = verdictByProbability(probability, decisionLevel);
  const band = guardBand(ofMean, decisionLevel);
  return {
    verdict,
    interval: {
      low: value - band,
      high: value + band,
      confidence: decisionLevel,
      method: `uncertainty of the readings; within the limits with a probability of ${roundedPercent(probability)}`,
      text: rangeInWords(value - band, value + band, scaleOf(criterion, shots)),
    },
    settles:
      verdict === "undecided"
        ? `less uncertain readings: with these it is within the limits with a probability of ${roundedPercent(probability)}, and ${percent(decisionLevel)} or more would be met, ${percent(1 - decisionLevel)} or less missed`
        : null,
  };
}
