/** Axes with the words and units of a metric. */
import type { Hand, Metric } from "../../../shared/plan-model.ts";
import { formatNumber, unitSuffix, wordFor } from "../../../shared/quantity.ts";
import { html, type Markup } from "../html/markup.ts";
import type { Scale } from "./scale.ts";

/** How a metric is read on an axis. */
export interface Shown {
  readonly metric: Metric;
  readonly hand: Hand;
}

/** Under a picture: ticks from `top` down to `bottom`, numbers below, the words for the two sides at the ends. */
export function axisBelow(scale: Scale, shown: Shown, top: number, bottom: number): Markup[] {
  return [
    ...scale.ticks.map((tick) => {
      const x = scale.at(tick);
      return html`<line class="${tick === 0 ? "zero" : "grid"}" x1="${x}" y1="${top}" x2="${x}" y2="${bottom}"/><text class="tick" x="${x}" y="${bottom + 11}" text-anchor="middle">${tickText(tick, scale, shown)}</text>`;
    }),
    html`<text class="name" x="${(scale.at(scale.low) + scale.at(scale.high)) / 2}" y="${bottom + 23}" text-anchor="middle">${axisName(shown)}</text>`,
  ];
}

/** Left of a picture: ticks from `left` to `right`, numbers in front. */
export function axisBeside(scale: Scale, shown: Shown, left: number, right: number): Markup[] {
  return scale.ticks.map((tick) => {
    const y = scale.at(tick);
    return html`<line class="${tick === 0 ? "zero" : "grid"}" x1="${left}" y1="${y}" x2="${right}" y2="${y}"/><text class="tick" x="${left - 4}" y="${y + 3}" text-anchor="end">${tickText(tick, scale, shown)}</text>`;
  });
}

/** `club-path in °, ← out-to-in, in-to-out →` */
export function axisName({ metric, hand }: Shown, arrows: readonly [string, string] = ["←", "→"]): string {
  const unit = unitSuffix(metric.unit).trim();
  const [less, more] = [wordFor(-1, metric.directions, hand), wordFor(1, metric.directions, hand)];
  const sides = [
    less === undefined ? null : `${arrows[0]} ${less}`,
    more === undefined ? null : `${more} ${arrows[1]}`,
  ].filter((side) => side !== null);
  return [`${metric.name}${unit === "" ? "" : ` in ${unit}`}`, ...sides].join(", ");
}

/** Sides have words at the axis, so that numbers of such metrics go without signs. */
function tickText(tick: number, { ticks }: Scale, { metric }: Shown): string {
  const [first = 0, second = 1] = ticks;
  const step = Number(((second - first) / metric.unit.factor).toPrecision(6));
  const value = metric.directions.length > 0 ? Math.abs(tick) : tick;
  return formatNumber(value, { symbol: "", factor: metric.unit.factor }, step);
}
