/** What to bear in mind about a statistic of the shots hit. */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import type { ReadingUncertainty } from "../../../shared/statistics/reading-uncertainty.ts";
import { standardDeviation } from "../../../shared/statistics/summary.ts";
import { shots as shotsInWords } from "../wording.ts";
import { nameOf } from "./names.ts";
import { notInTheNumber } from "./uncertainty.ts";
import { leftOutCautions, type UsableShots } from "./usable-shots.ts";

/**
 * Below so many shots a spread is off the player's own by more than a third, up or down, in one session of six or more:
 * the chi-square law of the standard deviation, for shots that are normally distributed.
 */
const FEW_FOR_A_SPREAD = 10;

export function cautionsOn(
  { statistic, metric, confidence }: StatisticCriterion,
  values: readonly number[],
  usable: UsableShots,
  uncertainty: ReadingUncertainty | null,
): string[] {
  if (values.length === 0) return [];
  const name = nameOf(statistic);
  const isSpread = statistic.kind === "spread";
  return [
    ...leftOutCautions(name, [metric], usable),
    ...(isSpread ? spreadCautions(values, confidence !== null) : []),
    ...(uncertainty === null || statistic.kind === "average"
      ? []
      : [isSpread ? TAKEN_OFF : notInTheNumber(name, metric)]),
  ];
}

const TAKEN_OFF = "What the instrument scatters by itself, from shot to shot, is taken off the spread.";

/** Of equal values limits say it themselves. */
export function spreadCautions(values: readonly number[], hasLimits: boolean): string[] {
  const { length } = values;
  if (length < 2) return [];
  return [
    length < FEW_FOR_A_SPREAD
      ? `A spread over ${shotsInWords(length)} is rough: luck alone often makes it a third smaller or larger.`
      : null,
    !hasLimits && standardDeviation(values) === 0
      ? "All values are equal: the readings are probably coarser than the shots differ."
      : null,
  ].filter((caution) => caution !== null);
}
