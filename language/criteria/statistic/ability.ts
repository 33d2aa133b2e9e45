/**
 * An average as ability: the player's true average, judged by Student's t at the planned number of shots. A range is
 * missed only by the two-sided limits, so that the promise holds for narrow ranges too.
 */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import { liesOutside } from "../../../shared/statistics/interval.ts";
import { meanLimits, meanShotsToDecide, meanVerdict } from "../../../shared/statistics/student.ts";
import { sampleOf } from "../../../shared/statistics/summary.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { impossibleConfidence, settlesAbility } from "../wording.ts";
import { rangeInWords } from "./value.ts";

/** What judging ability adds to an outcome. */
type AbilityOutcome = Pick<Outcome, "verdict" | "interval" | "settles" | "cautions">;

/** Judges the true average from the known values. To be asked when all planned shots are hit. */
export function judgeAbility(
  criterion: StatisticCriterion,
  confidence: number,
  values: readonly number[],
  shots: CountedShots,
): AbilityOutcome {
  if (criterion.statistic.kind !== "average") {
    return undecided(
      `ability is judged for an average only; without the confidence, the ${criterion.statistic.kind} of the shots hit is judged`,
    );
  }
  const sample = sampleOf(values);
  const limits = sample && meanLimits(sample, confidence);
  if (sample === undefined || limits === undefined) {
    return undecided(impossibleConfidence(confidence) ?? "2 shots or more with a reading");
  }
  const { interval: claim, slack } = claimOf(criterion.bounds, shots.hand);
  const verdict = meanVerdict(sample, claim, confidence, slack);
  const isOpen = verdict === "undecided";
  return {
    verdict,
    interval: {
      ...limits,
      confidence,
      method: "one-sided limits of Student's t",
      text: rangeInWords(limits.low, limits.high, criterion, shots),
    },
    settles: isOpen ? settlesAbility(meanShotsToDecide(sample, claim, confidence, slack), sample.n) : null,
    cautions: [
      sample.sd === 0 ? ALL_EQUAL : null,
      isOpen && liesOutside(limits, claim, slack) ? NOT_FAR_ENOUGH : null,
    ].filter((caution) => caution !== null),
  };
}

const ALL_EQUAL =
  "All values are equal, so the limits show no doubt at all: the readings are probably coarser than the shots differ.";

const NOT_FAR_ENOUGH =
  "The limits lie outside the range, but not far enough: a range has two sides to miss, and calling it missed takes wider limits.";

function undecided(settles: string): AbilityOutcome {
  return { verdict: "undecided", interval: null, settles, cautions: [] };
}
