/**
 * `area of the 80 % ellipse of offline and carry at most 250 yd²`: how far shots scatter in two metrics at once. About the
 * shots hit it is the size of their own ellipse (`measures.ts`); with a confidence it is about the area that holds that
 * share of the player's true shots (`ability.ts`). Axes have no such reading.
 *
 * Only shots that meet all requirements of the block and have a reading of both metrics enter.
 */
import type { EllipseCriterion } from "../../../shared/plan-model.ts";
import { type Interval, isInside } from "../../../shared/statistics/interval.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { noReadingAsAbility } from "../statistic/ability.ts";
import { type AbilityOutcome, judgeByMethod, undecided } from "../statistic/methods/judge.ts";
import { observed } from "../statistic/observed.ts";
import { notMeasured, shotsToCome, tooFewKnown, usableShots, valuesAt } from "../statistic/usable-shots.ts";
import { rangeInWords, valueInWords } from "../statistic/value.ts";
import { impossibleConfidence } from "../wording.ts";
import { areaMethod } from "./ability.ts";
import { cautionsOn } from "./cautions.ts";
import { FEWEST_SHOTS, measureShots } from "./measures.ts";
import { required, scaleOf, sentenceOf } from "./words.ts";

export const ellipse: CriterionKind<"ellipse"> = {
  sentence: sentenceOf,
  metrics: ({ metrics }) => metrics,
  evaluate,
};

function evaluate(criterion: EllipseCriterion, shots: CountedShots): Outcome {
  const { measure, metrics, bounds, confidence } = criterion;
  const [first, second] = metrics;
  const usable = usableShots(metrics, shots);
  const columns = [valuesAt(first, usable, shots), valuesAt(second, usable, shots)] as const;
  const value = measureShots(criterion, ...columns);
  const brief = value === undefined ? "" : valueInWords(value, scaleOf(criterion, shots));
  const outcome = {
    required: required(criterion),
    observed: observed(value === undefined ? null : `${measure} ${brief}`, metrics, usable, shots),
    brief,
    value: value ?? null,
    shotsUsed: usable.indices.length,
    tally: null,
    interval: null,
    settles: null,
    deciding: usable.indices,
    cautions: cautionsOn(criterion, columns, usable, shots),
  };
  const open = (settles: string): Outcome => ({ ...outcome, verdict: "undecided", settles });

  const unmeasured = notMeasured(metrics, usable, shots);
  if (unmeasured !== null) return { ...outcome, ...unmeasured };
  const settles = tooFewKnown(metrics, usable, shots) ?? shotsToCome(confidence, shots);
  if (settles !== null) return open(settles);
  if (value === undefined) {
    const isFew = columns[0].length < FEWEST_SHOTS;
    return open(isFew ? `an ellipse needs ${FEWEST_SHOTS} shots or more` : "a share between 0 % and 100 %");
  }
  if (measure !== "area" && shots.metric(first).dimension !== shots.metric(second).dimension) {
    return open(`two metrics of the same kind: ${first} and ${second} have no length in common`);
  }
  if (confidence !== null) {
    const judged = judgeAbility(criterion, confidence, value, columns, shots);
    return { ...outcome, ...judged, cautions: [...outcome.cautions, ...judged.cautions] };
  }
  const { interval: claim, slack } = claimOf(bounds, shots.hand);
  return { ...outcome, verdict: isInside(value, claim, slack) ? "met" : "missed" };
}

function judgeAbility(
  criterion: EllipseCriterion,
  confidence: number,
  area: number,
  columns: readonly [readonly number[], readonly number[]],
  shots: CountedShots,
): AbilityOutcome {
  const impossible = impossibleConfidence(confidence);
  if (impossible !== null) return undecided(impossible);
  const { measure, bounds } = criterion;
  if (measure !== "area") return undecided(noReadingAsAbility(`${measure} of an ellipse`));
  const { interval: claim, slack } = claimOf(bounds, shots.hand);
  const write = ({ low, high }: Interval) => rangeInWords(low, high, scaleOf(criterion, shots));
  return judgeByMethod(areaMethod(area, columns), { claim, confidence, slack }, columns[0].length, write);
}
