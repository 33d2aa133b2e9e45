/** The value of a statistic in words. */
import { intervalOf, unitOf } from "../../../shared/interval.ts";
import type { Metric, StatisticCriterion } from "../../../shared/plan-model.ts";
import { finer, formatAmount, formatReading } from "../../../shared/quantity.ts";
import { slackOf } from "../../../shared/statistics/interval.ts";
import type { CountedShots } from "../criterion.ts";

/** Beyond so many digits more than a reading has, no digit is meant. */
const MOST_DIGITS_MORE = 3;

/**
 * A value in the unit the coach wrote, as finely as the readings, and finer where it could not be told from a limit
 * otherwise: against "at most 2.5°" a spread of 2.53° is not shown as 2.5°.
 */
export function valueInWords(
  value: number,
  { statistic, metric, bounds }: StatisticCriterion,
  shots: CountedShots,
): string {
  const unit = unitOf(bounds);
  const shown = fineEnough(value, { metric: shots.metric(metric), bounds, hand: shots.hand });
  return statistic === "spread"
    ? formatAmount(value, shown, unit)
    : formatReading(value, shown, shots.hand, unit);
}

function fineEnough(
  value: number,
  {
    metric,
    bounds,
    hand,
  }: { metric: Metric; bounds: StatisticCriterion["bounds"]; hand: CountedShots["hand"] },
): Metric {
  const unit = unitOf(bounds);
  const { low, high } = intervalOf(bounds, hand);
  const limits = [low, high].filter(
    (limit) => Number.isFinite(limit) && Math.abs(limit - value) > slackOf(unit.factor),
  );
  let shown = metric;
  for (let more = 0; more < MOST_DIGITS_MORE; more++) {
    const text = formatAmount(value, shown, unit);
    if (!limits.some((limit) => formatAmount(limit, shown, unit) === text)) break;
    shown = finer(shown);
  }
  return shown;
}
