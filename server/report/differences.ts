/** Differences between two numbers of a metric, in words. */
import type { Hand, Metric } from "../../shared/plan-model.ts";
import { formatAmount, wordFor } from "../../shared/quantity.ts";
import type { Interval } from "../../shared/statistics/interval.ts";

/** `2.4° farther in-to-out`, `3 yd less`, `no difference` */
export function differenceInWords(value: number, metric: Metric, hand: Hand): string {
  const amount = formatAmount(Math.abs(value), metric);
  return amount === formatAmount(0, metric) ? "no difference" : `${amount} ${sideOf(value, metric, hand)}`;
}

/** `1.2° to 3.1° farther in-to-out`; with both sides where zero lies between. */
export function differencesInWords({ low, high }: Interval, metric: Metric, hand: Hand): string {
  const [less, more] = Math.abs(low) < Math.abs(high) ? [low, high] : [high, low];
  if (low * high > 0)
    return `${formatAmount(Math.abs(less), metric)} to ${differenceInWords(more, metric, hand)}`;
  return `${differenceInWords(low, metric, hand)} to ${differenceInWords(high, metric, hand)}`;
}

function sideOf(value: number, { directions }: Metric, hand: Hand): string {
  const side = wordFor(value < 0 ? -1 : 1, directions, hand);
  return side === undefined ? (value < 0 ? "less" : "more") : `farther ${side}`;
}
