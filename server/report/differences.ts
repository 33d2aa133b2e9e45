/** Differences between two numbers of a metric, in words. */
import type { Hand, Metric } from "../../shared/plan-model.ts";
import { formatAmount, wordFor } from "../../shared/quantity.ts";
import type { Interval } from "../../shared/statistics/interval.ts";

/** `2.4° farther in-to-out`, `3 yd less`; what rounds to nothing is not said to be nothing: `less than 0.1°`. */
export function differenceInWords(value: number, metric: Metric, hand: Hand): string {
  const { step, unit } = metric;
  return isShown(value, metric)
    ? sided(value, metric, hand)
    : `less than ${formatAmount(step * unit.factor, metric)}`;
}

/** `1.2° to 3.1° farther in-to-out`; with both sides where zero lies between. */
export function differencesInWords({ low, high }: Interval, metric: Metric, hand: Hand): string {
  const [less, more] = Math.abs(low) < Math.abs(high) ? [low, high] : [high, low];
  if (low * high > 0) return `${formatAmount(Math.abs(less), metric)} to ${sided(more, metric, hand)}`;
  return `${sided(low, metric, hand)} to ${sided(high, metric, hand)}`;
}

function sided(value: number, metric: Metric, hand: Hand): string {
  const amount = formatAmount(Math.abs(value), metric);
  return isShown(value, metric) ? `${amount} ${sideOf(value, metric, hand)}` : amount;
}

function isShown(value: number, metric: Metric): boolean {
  return formatAmount(Math.abs(value), metric) !== formatAmount(0, metric);
}

function sideOf(value: number, { directions }: Metric, hand: Hand): string {
  const side = wordFor(value < 0 ? -1 : 1, directions, hand);
  return side === undefined ? (value < 0 ? "less" : "more") : `farther ${side}`;
}
