/** The value of a statistic in words. */
import { intervalOf, unitOf } from "../../../shared/interval.ts";
import type { Direction, Metric, StatisticCriterion } from "../../../shared/plan-model.ts";
import { finer, formatAmount, formatRange, formatReading } from "../../../shared/quantity.ts";
import { slackOf } from "../../../shared/statistics/interval.ts";
import type { CountedShots } from "../criterion.ts";

/** Beyond so many digits more than a reading has, no digit is meant. */
const MOST_DIGITS_MORE = 3;

/**
 * A value in the unit the coach wrote, as finely as the readings, and finer where it could not be told from a limit
 * otherwise: against "at most 2.5°" a spread of 2.53° is not shown as 2.5°.
 */
export function valueInWords(value: number, criterion: StatisticCriterion, shots: CountedShots): string {
  const unit = unitOf(criterion.bounds);
  const shown = fineEnough([value], criterion, shots);
  return criterion.statistic.kind === "spread"
    ? formatAmount(value, shown, unit)
    : formatReading(value, shown, shots.hand, unit);
}

/** Both ends of a range as `valueInWords` has them, and so finely that they can be told from each other. */
export function rangeInWords(
  low: number,
  high: number,
  criterion: StatisticCriterion,
  shots: CountedShots,
): string {
  const shown = fineEnough([low, high], criterion, shots);
  return formatRange(low, high, shown, shots.hand, unitOf(criterion.bounds));
}

/** The metric, shown so finely that no value looks like a limit, or like another value, that it is not equal to. */
function fineEnough(
  values: readonly number[],
  { metric, bounds }: StatisticCriterion,
  { metric: metricCalled, hand }: CountedShots,
): Metric {
  const unit = unitOf(bounds);
  const { low, high } = intervalOf(bounds, hand);
  const others = [low, high, ...values].filter(Number.isFinite);
  const apart = values.flatMap((value) =>
    others
      .filter((other) => Math.abs(other - value) > slackOf(unit.factor))
      .map((other) => [value, other] as const),
  );
  let shown = inTheWordsOf(bounds, metricCalled(metric));
  for (let more = 0; more < MOST_DIGITS_MORE; more++) {
    const text = (value: number) => formatAmount(value, shown, unit);
    if (!apart.some(([value, other]) => text(value) === text(other))) break;
    shown = finer(shown);
  }
  return shown;
}

/** Where the coach wrote sides as everybody sees them (`right`), not as the hand has them (`in-to-out`), so is the value. */
function inTheWordsOf(bounds: StatisticCriterion["bounds"], metric: Metric): Metric {
  const written = directionsIn(bounds);
  if (written.length === 0 || written.some(({ handed }) => handed)) return metric;
  return { ...metric, directions: metric.directions.filter(({ handed }) => !handed) };
}

function directionsIn(bounds: StatisticCriterion["bounds"]): Direction[] {
  const amounts =
    bounds.kind === "within"
      ? [bounds.centre]
      : bounds.kind === "between"
        ? [bounds.one, bounds.other]
        : [bounds.limit];
  return amounts.map(({ direction }) => direction).filter((direction) => direction !== null);
}
