/**
 * `average club-path within 2° of 1° in-to-out`: the average, median or spread of a metric over the block. About the
 * shots hit it is compared with its limits; with a confidence it is about the player's true average (`ability.ts`).
 *
 * Only shots that meet all requirements of the block enter. A shot whose value or requirements are unknown is left out
 * of the number and said so, as long as most values are known.
 */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import { writeBounds } from "../../../shared/quantity.ts";
import { isInside } from "../../../shared/statistics/interval.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { plannedShots } from "../hits.ts";
import { notHitYet, shortOf } from "../open-shots.ts";
import { hasRequirements } from "../required.ts";
import { joined, percent, shots as shotsInWords, unlessZero } from "../wording.ts";
import { judgeAbility } from "./ability.ts";
import { valueInWords } from "./value.ts";
import { cautionsOn, compute, readingsWanted, type Values, valuesOf } from "./values.ts";

/** Below this share of known values a statistic over them decides nothing. */
const LEAST_KNOWN = 0.8;

export const statistic: CriterionKind<"statistic"> = {
  sentence: (criterion, isRequiring) => {
    const { metric, bounds, confidence } = criterion;
    const statistic = criterion.statistic.kind;
    const number =
      statistic === "spread" ? `spread of ${metric} (standard deviation)` : `${statistic} ${metric}`;
    const range = writeBounds(bounds);
    if (confidence === null) {
      return `Over the block's shots${isRequiring ? " that are as required" : ""}, the ${number} is ${range}.`;
    }
    const over = isRequiring ? " over shots that are as required" : "";
    return `In the long run, the player's ${number}${over} is ${range}, shown at ${percent(confidence)} confidence.`;
  },
  metrics: ({ metric }) => [metric],
  evaluate,
};

function evaluate(criterion: StatisticCriterion, shots: CountedShots): Outcome {
  const { statistic, metric, confidence } = criterion;
  const values = valuesOf(metric, shots);
  const value = compute(statistic, values.known);
  const planned = plannedShots(shots);
  const toCome = planned - shots.size;
  const outcome = {
    required: required(criterion),
    observed: observed(criterion, shots, values, value),
    brief: value === undefined ? "" : valueInWords(value, criterion, shots),
    value: value ?? null,
    shotsUsed: values.known.length,
    tally: null,
    interval: null,
    settles: null,
    deciding: values.indices,
    cautions: cautionsOn(criterion, values),
  };
  const undecided = (settles: string): Outcome => ({ ...outcome, verdict: "undecided", settles });

  const { known } = values;
  if (known.length === 0) {
    return { ...outcome, verdict: "not-measured", settles: settlesUnmeasured(criterion, values, shots) };
  }
  const belonging = known.length + values.missing + values.doubtful;
  if (known.length / belonging < LEAST_KNOWN) {
    const more = Math.ceil(LEAST_KNOWN * belonging - 1e-9) - known.length;
    return undecided(
      `${readingsWanted(metric, shots)} for ${more} more of the ${belonging} shots: ${known.length} are too few`,
    );
  }
  if (toCome > 0) {
    const when = confidence === null ? "" : `: ability is judged on all ${planned}`;
    return undecided(`${notHitYet(toCome)}${when}`);
  }
  if (value === undefined) return undecided("a spread needs 2 shots or more");
  if (confidence !== null) {
    const ability = judgeAbility(criterion, confidence, known, shots);
    return { ...outcome, ...ability, cautions: [...outcome.cautions, ...ability.cautions] };
  }
  const { interval, slack } = claimOf(criterion.bounds, shots.hand);
  return { ...outcome, verdict: isInside(value, interval, slack) ? "met" : "missed" };
}

function settlesUnmeasured(
  { metric }: StatisticCriterion,
  { missing, doubtful, refused }: Values,
  shots: CountedShots,
): string {
  if (missing + doubtful > 0) return readingsWanted(metric, shots);
  const toCome = plannedShots(shots) - shots.size;
  if (toCome > 0) return notHitYet(toCome);
  return refused > 0 ? "shots that meet what the block requires" : "shots to judge";
}

function required({ statistic, metric, bounds, confidence }: StatisticCriterion): string {
  const claim = `${statistic.kind}${statistic.kind === "spread" ? " of" : ""} ${metric} ${writeBounds(bounds)}`;
  return confidence === null ? claim : `in the long run, ${claim}, at ${percent(confidence)} confidence`;
}

/** `average 1.2° in-to-out over 12 shots; 4 shots short of 16`. */
function observed(
  criterion: StatisticCriterion,
  shots: CountedShots,
  { known, missing, doubtful, refused }: Values,
  value: number | undefined,
): string {
  const planned = plannedShots(shots);
  const short = unlessZero(planned - shots.size, (count) => shortOf(count, planned));
  const { statistic, metric } = criterion;
  if (shots.size === 0) return "no shots hit";
  if (value !== undefined) {
    const asRequired = hasRequirements(shots) ? " as required" : "";
    const text = valueInWords(value, criterion, shots);
    return joined(`${statistic.kind} ${text} over ${shotsInWords(known.length)}${asRequired}`, short);
  }
  if (known.length > 0) return joined(`one reading of ${metric} only`, short);
  if (missing + doubtful === 0) {
    const none = refused === 1 ? "the one shot did not meet" : `none of ${refused} shots met`;
    return joined(`${none} what the block requires`, short);
  }
  const usable = doubtful > 0 ? "usable " : "";
  return joined(`no ${usable}reading of ${metric} in ${shotsInWords(missing + doubtful)}`, short);
}
