/** The values a statistic is made of, and what is to be said of those it has to do without. */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import { median, sampleOf } from "../../../shared/statistics/summary.ts";
import type { CountedShots } from "../criterion.ts";
import { readingsOf } from "../open-shots.ts";
import type { Truth } from "../verdict.ts";
import { shots as shotsInWords, unlessZero } from "../wording.ts";

export interface Values {
  readonly known: readonly number[];
  /** The shots of the known values. */
  readonly indices: readonly number[];
  /** Shots that have no value. */
  readonly missing: number;
  /** Shots that have a value but cannot be told to meet the requirements. */
  readonly doubtful: number;
  /** Shots that failed a requirement. */
  readonly refused: number;
}

/** The values of the shots that meet every requirement of the block (`required.ts`). */
export function valuesOf(metric: string, shots: CountedShots): Values {
  const known: number[] = [];
  const indices: number[] = [];
  let missing = 0;
  let doubtful = 0;
  let refused = 0;
  for (const [index, value] of shots.values(metric).entries()) {
    const admitted = shots.admitted[index];
    if (admitted === false) refused++;
    else if (value === undefined) missing++;
    else if (admitted === undefined) doubtful++;
    else {
      known.push(value);
      indices.push(index);
    }
  }
  return { known, indices, missing, doubtful, refused };
}

/** Undefined where there are too few values: none, or a single one for a spread. */
export function compute(
  statistic: StatisticCriterion["statistic"],
  values: readonly number[],
): number | undefined {
  switch (statistic.kind) {
    case "average":
      return sampleOf(values)?.mean;
    case "median":
      return median(values);
    case "spread":
      return sampleOf(values)?.sd;
    default:
      return undefined;
  }
}

/** Which readings would make more values usable: `readings of carry`. */
export function readingsWanted(metric: string, shots: CountedShots): string {
  const values = shots.values(metric);
  const usable = shots.admitted.map((admitted, index): Truth => {
    if (admitted === false) return false;
    return admitted === undefined || values[index] === undefined ? undefined : true;
  });
  return readingsOf(usable, [metric, ...shots.requiredMetrics], shots);
}

/**
 * Below so many shots a spread is off the player's own by more than a third, up or down, in one session of six or more:
 * the chi-square law of the standard deviation, for shots that are normally distributed.
 */
const FEW_FOR_A_SPREAD = 10;

/** What to bear in mind about a statistic of these values. */
export function cautionsOn({ statistic, metric }: StatisticCriterion, values: Values): string[] {
  const { known, missing, doubtful, refused } = values;
  const { length } = known;
  if (length === 0) return [];
  const isSpread = statistic.kind === "spread";
  return [
    unlessZero(
      missing,
      (count) =>
        `${shotsInWords(count)} without a reading of ${metric} ${isOrAre(count)} not in the ${statistic.kind}.`,
    ),
    unlessZero(
      doubtful,
      (count) =>
        `${shotsInWords(count)} ${isOrAre(count)} not in the ${statistic.kind}: whether the block's requirements were met cannot be told.`,
    ),
    unlessZero(
      refused,
      (count) =>
        `${shotsInWords(count)} did not meet what the block requires and ${isOrAre(count)} not in the ${statistic.kind}.`,
    ),
    isSpread && length > 1 && length < FEW_FOR_A_SPREAD
      ? `A spread over ${shotsInWords(length)} is rough: luck alone often makes it a third smaller or larger.`
      : null,
    isSpread && compute({ kind: "spread" }, known) === 0
      ? "All values are equal: the readings are probably coarser than the shots differ."
      : null,
  ].filter((caution) => caution !== null);
}

function isOrAre(count: number): string {
  return count === 1 ? "is" : "are";
}
