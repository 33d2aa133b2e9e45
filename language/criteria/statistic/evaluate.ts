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
import { median, sampleOf } from "../../../shared/statistics/summary.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { plannedShots } from "../hits.ts";
import { joined, percent, shots as shotsInWords, unlessZero } from "../wording.ts";
import { judgeAbility } from "./ability.ts";
import { valueInWords } from "./value.ts";

/** Below this share of known values a statistic over them decides nothing. */
const LEAST_KNOWN = 0.8;

/** The values a statistic is made of, and the shots it has to do without. */
interface Values {
  readonly known: readonly number[];
  /** The shots of the known values. */
  readonly indices: readonly number[];
  /** Shots that might belong to it but whose value, or right to count, is unknown. */
  readonly unknown: number;
  /** Shots that failed a requirement. */
  readonly refused: number;
}

export const statistic: CriterionKind<"statistic"> = {
  sentence: ({ statistic, metric, bounds, confidence }) =>
    confidence === null
      ? `The ${nameOf(statistic)} ${metric} of the block's shots is ${writeBounds(bounds)}.`
      : `In the long run, the player's ${nameOf(statistic)} ${metric} is ${writeBounds(bounds)}, shown at ${percent(confidence)} confidence.`,
  metrics: ({ metric }) => [metric],
  evaluate,
};

function evaluate(criterion: StatisticCriterion, shots: CountedShots): Outcome {
  const { statistic, metric, confidence } = criterion;
  const values = collect(metric, shots);
  const value = compute(statistic, values.known);
  const toCome = plannedShots(shots) - shots.size;
  const outcome = {
    required: required(criterion),
    observed: observed(criterion, shots, values, value, toCome),
    value: value ?? null,
    shotsUsed: values.known.length,
    tally: null,
    interval: null,
    settles: null,
    deciding: values.indices,
    cautions: cautions(criterion, values),
  };
  const undecided = (settles: string): Outcome => ({ ...outcome, verdict: "undecided", settles });

  const { known, unknown } = values;
  if (known.length === 0) {
    return { ...outcome, verdict: "not-measured", settles: settlesUnmeasured(metric, values, toCome) };
  }
  const belonging = known.length + unknown;
  if (known.length / belonging < LEAST_KNOWN) {
    const missing = Math.ceil(LEAST_KNOWN * belonging - 1e-9) - known.length;
    return undecided(
      `${metric} is known for ${known.length} of ${shotsInWords(belonging)}; readings for ${missing} more would do`,
    );
  }
  if (toCome > 0) {
    const when = confidence === null ? "" : `: ability is judged when all ${plannedShots(shots)} are hit`;
    return undecided(`${shotsInWords(toCome)} to come${when}`);
  }
  if (value === undefined) return undecided("a spread needs 2 shots or more");
  if (confidence !== null) {
    const ability = judgeAbility(criterion, confidence, known, shots);
    return { ...outcome, ...ability, cautions: [...outcome.cautions, ...ability.cautions] };
  }
  const { interval, slack } = claimOf(criterion.bounds, shots.hand);
  return { ...outcome, verdict: isInside(value, interval, slack) ? "met" : "missed" };
}

function settlesUnmeasured(metric: string, { unknown, refused }: Values, toCome: number): string {
  if (unknown > 0) return `readings of ${metric}`;
  return refused > 0 ? "shots that meet what the block requires" : `${shotsInWords(toCome)} to come`;
}

function collect(metric: string, shots: CountedShots): Values {
  const known: number[] = [];
  const indices: number[] = [];
  let unknown = 0;
  let refused = 0;
  for (const [index, value] of shots.values(metric).entries()) {
    const admitted = shots.admitted[index];
    if (admitted === false) refused++;
    else if (admitted === undefined || value === undefined) unknown++;
    else {
      known.push(value);
      indices.push(index);
    }
  }
  return { known, indices, unknown, refused };
}

/** Undefined where there are too few values: none, or a single one for a spread. */
function compute(statistic: StatisticCriterion["statistic"], values: readonly number[]): number | undefined {
  switch (statistic) {
    case "average":
      return sampleOf(values)?.mean;
    case "median":
      return median(values);
    case "spread":
      return sampleOf(values)?.sd;
  }
}

function nameOf(statistic: StatisticCriterion["statistic"]): string {
  return statistic === "spread" ? "spread (standard deviation) of" : statistic;
}

function required({ statistic, metric, bounds, confidence }: StatisticCriterion): string {
  const claim = `${statistic}${statistic === "spread" ? " of" : ""} ${metric} ${writeBounds(bounds)}`;
  return confidence === null ? claim : `${claim} in the long run, at ${percent(confidence)} confidence`;
}

/** `average 1.2° in-to-out over 12 shots; 4 to come`. */
function observed(
  criterion: StatisticCriterion,
  shots: CountedShots,
  { known, unknown, refused }: Values,
  value: number | undefined,
  toCome: number,
): string {
  const coming = unlessZero(toCome, (count) => `${count} to come`);
  if (shots.size === 0) return "no shots hit";
  if (value === undefined) {
    const reason =
      known.length > 0
        ? `one value of ${criterion.metric} only`
        : unknown > 0
          ? `no value of ${criterion.metric} in ${shotsInWords(unknown)}`
          : `none of ${shotsInWords(refused)} met what the block requires`;
    return joined(reason, coming);
  }
  const text = valueInWords(value, criterion, shots);
  return joined(`${criterion.statistic} ${text} over ${shotsInWords(known.length)}`, coming);
}

function cautions({ statistic, metric }: StatisticCriterion, { known, unknown, refused }: Values): string[] {
  if (known.length === 0) return [];
  return [
    unlessZero(
      unknown,
      (count) =>
        `${shotsInWords(count)} without a usable value of ${metric} ${isOrAre(count)} not in the ${statistic}.`,
    ),
    unlessZero(
      refused,
      (count) =>
        `${shotsInWords(count)} did not meet what the block requires and ${isOrAre(count)} not in the ${statistic}.`,
    ),
  ].filter((caution) => caution !== null);
}

function isOrAre(count: number): string {
  return count === 1 ? "is" : "are";
}
