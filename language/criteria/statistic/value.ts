/** Numbers that sum up shots, in words. */
import { intervalOf, unitOf } from "../../../shared/interval.ts";
import type { Bounds, Direction, Hand, Metric, Statistic, Unit } from "../../../shared/plan-model.ts";
import { finer, formatAmount, formatRange, formatReading } from "../../../shared/quantity.ts";
import { slackOf } from "../../../shared/statistics/interval.ts";
import type { CountedShots } from "../criterion.ts";
import { isWidth } from "./names.ts";

/** Beyond so many digits more than a reading has, no digit is meant. */
const MOST_DIGITS_MORE = 3;

/** How values are written. */
export interface Scale {
  /** With the step of its readings, and the direction words to use; none for an amount without a side. */
  readonly metric: Metric;
  readonly unit: Unit;
  readonly hand: Hand;
  /** What values are held against, so that they must be told from it. Finite. */
  readonly limits: readonly number[];
}

/** The scale of a statistic: the unit the coach wrote. */
export function scaleOf(
  { statistic, metric, bounds }: { statistic: Statistic; metric: string; bounds: Bounds },
  { metric: metricCalled, hand }: CountedShots,
): Scale {
  const { low, high } = intervalOf(bounds, hand);
  const declared = metricCalled(metric);
  return {
    metric: isWidth(statistic)
      ? { ...declared, directions: [] }
      : inTheWordsOf(directionsIn(bounds), declared),
    unit: unitOf(bounds),
    hand,
    limits: [low, high].filter(Number.isFinite),
  };
}

/**
 * A value as finely as the readings, and finer where it could not be told from a limit otherwise: against "at most 2.5°" a
 * spread of 2.53° is not shown as 2.5°.
 */
export function valueInWords(value: number, scale: Scale): string {
  return formatReading(value, fineEnough([value], scale), scale.hand, scale.unit);
}

/** Both ends of a range as `valueInWords` has them, and so finely that they can be told from each other. */
export function rangeInWords(low: number, high: number, scale: Scale): string {
  const ends = [low, high].filter(Number.isFinite);
  const shown = fineEnough(ends, scale);
  const [end] = ends;
  if (ends.length === 2) return formatRange(low, high, shown, scale.hand, scale.unit);
  if (end === undefined) return "no limit on either side";
  const text = formatReading(end, shown, scale.hand, scale.unit);
  if (shown.directions.length > 0) return `${text} on one side, no limit on the other`;
  return end === low ? `at least ${text}, no upper limit` : `at most ${text}, no lower limit`;
}

/** The metric, shown so finely that no value looks like a limit, or like another value, that it is not equal to. */
export function fineEnough(values: readonly number[], { metric, unit, limits }: Scale): Metric {
  const others = [...limits, ...values];
  const apart = values.flatMap((value) =>
    others
      .filter((other) => Math.abs(other - value) > slackOf(unit.factor))
      .map((other) => [value, other] as const),
  );
  let shown = metric;
  for (let more = 0; more < MOST_DIGITS_MORE; more++) {
    const text = (value: number) => formatAmount(value, shown, unit);
    if (!apart.some(([value, other]) => text(value) === text(other))) break;
    shown = finer(shown);
  }
  return shown;
}

/** Where the coach wrote sides as everybody sees them (`right`), not as the hand has them (`in-to-out`), so is the value. */
export function inTheWordsOf(written: readonly Direction[], metric: Metric): Metric {
  if (written.length === 0 || written.some(({ handed }) => handed)) return metric;
  return { ...metric, directions: metric.directions.filter(({ handed }) => !handed) };
}

/** The direction words that bounds are written with. */
export function directionsIn(bounds: Bounds): Direction[] {
  const amounts =
    bounds.kind === "within"
      ? [bounds.centre]
      : bounds.kind === "between"
        ? [bounds.one, bounds.other]
        : [bounds.limit];
  return amounts.map(({ direction }) => direction).filter((direction) => direction !== null);
}
