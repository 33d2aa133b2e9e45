/**
 * `average club-path within 2° of 1° in-to-out`: a number that sums up a metric over the block. About the shots hit it is
 * compared with its limits (`extreme.ts`, `probability.ts`); with a confidence it is about the player's true number
 * (`ability.ts`).
 *
 * Only shots that meet all requirements of the block enter. A shot whose value or requirements are unknown is left out
 * of the number and said so, as long as most values are known.
 */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import { type Interval, isInside } from "../../../shared/statistics/interval.ts";
import { uncertaintyOfMean } from "../../../shared/statistics/reading-uncertainty.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { percent } from "../wording.ts";
import { judgeAbility } from "./ability.ts";
import { cautionsOn } from "./cautions.ts";
import { compute, orderOf } from "./compute.ts";
import { judgeExtreme } from "./extreme.ts";
import { claimInWords, isExtreme, nameOf } from "./names.ts";
import { observed } from "./observed.ts";
import { withProbability } from "./probability.ts";
import { sentenceOf } from "./sentence.ts";
import { uncertaintyOf } from "./uncertainty.ts";
import { notMeasured, shotsToCome, tooFewKnown, usableShots, valuesAt } from "./usable-shots.ts";
import { directionsIn, rangeInWords, scaleOf, valueInWords } from "./value.ts";

export const statistic: CriterionKind<"statistic"> = {
  sentence: sentenceOf,
  metrics: ({ metric }) => [metric],
  evaluate,
};

function evaluate(criterion: StatisticCriterion, shots: CountedShots): Outcome {
  const { statistic, metric, bounds, confidence } = criterion;
  const usable = usableShots([metric], shots);
  const values = valuesAt(metric, usable, shots);
  const uncertainty = uncertaintyOf(metric, usable.indices, shots);
  const order = orderOf(shots.metric(metric), shots.hand, directionsIn(bounds));
  const value = compute(statistic, values, order, uncertainty?.random);
  const outcome = {
    ...seen(criterion, value, usable, shots),
    required: required(criterion),
    shotsUsed: values.length,
    tally: null,
    interval: null,
    settles: null,
    deciding: usable.indices,
    cautions: cautionsOn(criterion, values, usable, uncertainty),
  };
  const undecided = (settles: string): Outcome => ({ ...outcome, verdict: "undecided", settles });

  const unmeasured = notMeasured([metric], usable, shots);
  if (unmeasured !== null) return { ...outcome, ...unmeasured };
  if (isExtreme(statistic) && confidence === null) {
    const { value, ...judged } = judgeExtreme({ ...criterion, statistic }, usable, shots);
    return { ...outcome, ...seen(criterion, value, usable, shots), ...judged };
  }
  const open = tooFewKnown([metric], usable, shots) ?? shotsToCome(confidence, shots);
  if (open !== null) return undecided(open);
  if (value === undefined) return undecided(moreForIt(criterion));
  if (confidence !== null) {
    const judged = judgeAbility(criterion, confidence, values, uncertainty, shots);
    return { ...outcome, ...judged, cautions: [...outcome.cautions, ...judged.cautions] };
  }
  const claim = claimOf(bounds, shots.hand);
  const verdict = isInside(value, claim.interval, claim.slack) ? "met" : "missed";
  const asRead: Outcome = { ...outcome, verdict };
  if (uncertainty === null || statistic.kind !== "average") return asRead;
  const doubtful = { value, uncertainty: uncertaintyOfMean(values.length, uncertainty) };
  const write = ({ low, high }: Interval) => rangeInWords(low, high, scaleOf(criterion, shots));
  return withProbability(asRead, "average", doubtful, claim, shots, write);
}

/** The number as it was seen, in words and in SI. */
function seen(
  criterion: StatisticCriterion,
  value: number | undefined,
  usable: Parameters<typeof observed>[2],
  shots: CountedShots,
): Pick<Outcome, "observed" | "brief" | "value"> {
  const { statistic, metric } = criterion;
  const brief = value === undefined ? "" : valueInWords(value, scaleOf(criterion, shots));
  const number = value === undefined ? null : `${nameOf(statistic)} ${brief}`;
  return { observed: observed(number, [metric], usable, shots), brief, value: value ?? null };
}

function required({ statistic, metric, bounds, confidence }: StatisticCriterion): string {
  const claim = claimInWords(statistic, metric, bounds);
  return confidence === null ? claim : `in the long run, ${claim}, at ${percent(confidence)} confidence`;
}

/** What a number needs that could not be made of the values. */
function moreForIt({ statistic }: StatisticCriterion): string {
  return statistic.kind === "spread" ? "a spread needs 2 shots or more" : "a share between 0 % and 100 %";
}
