/** A number with its interval, alone or before and after a change, over the shots it was made of. */
import type { Interval } from "../../../shared/interval.ts";
import { formatReading } from "../../../shared/quantity.ts";
import { html, type Markup } from "../html/markup.ts";
import { axisBelow, type Shown } from "./axis.ts";
import { figure } from "./figure.ts";
import { scaleOf } from "./scale.ts";

export interface IntervalRow {
  readonly label: string;
  /** SI, target frame. */
  readonly value: number;
  /** What is likely of the true number; null where nothing can be said. */
  readonly limits: { readonly low: number; readonly high: number } | null;
  /** Single shots, drawn as ticks. */
  readonly shots: readonly number[];
}

export interface IntervalsDrawing {
  readonly rows: readonly IntervalRow[];
  /** What is asked of the number; null where nothing is. */
  readonly band: Interval | null;
  readonly shown: Shown;
  readonly caption: string;
}

const WIDTH = 320;
const LABELS = 62;
const MARGIN = 14;
const ROW = 22;
const MOST_TICKS = 300;

/** The picture; null without rows. */
export function intervals({ rows, band, shown, caption }: IntervalsDrawing): Markup | null {
  if (rows.length === 0) return null;
  const { metric, hand } = shown;
  const values = rows.flatMap(({ value, limits, shots }) => [
    value,
    ...(limits === null ? [] : [limits.low, limits.high]),
    ...shots,
  ]);
  const left = rows.some(({ label }) => label !== "") ? LABELS : MARGIN;
  const scale = scaleOf([...values, ...(band === null ? [] : [band.low, band.high])], {
    from: left,
    to: WIDTH - MARGIN,
    unit: metric.unit.factor,
  });
  const bottom = ROW * rows.length + 2;
  const inside = (value: number) => scale.at(Math.min(Math.max(value, scale.low), scale.high));
  return figure({
    width: WIDTH,
    height: bottom + 28,
    caption,
    alternative: rows
      .map(({ label, value, limits, shots }) => {
        const text = (number: number) => formatReading(number, metric, hand);
        const range = limits === null ? "" : `, likely between ${text(limits.low)} and ${text(limits.high)}`;
        return `${label === "" ? metric.name : label}: ${text(value)} over ${shots.length} shots${range}.`;
      })
      .join(" "),
    body: [
      band === null
        ? html``
        : html`<rect class="band" x="${inside(band.low)}" y="0" width="${Math.max(0, inside(band.high) - inside(band.low))}" height="${bottom}"/>`,
      ...axisBelow(scale, shown, 0, bottom),
      ...rows.flatMap(({ label, value, limits, shots }, place) => {
        const y = ROW * place + 12;
        return [
          html`<text class="label" x="2" y="${y + 3}">${label}</text>`,
          ...shots
            .slice(0, MOST_TICKS)
            .map((shot) => html`<path class="single" d="M${scale.at(shot)} ${y - 6}v12"/>`),
          limits === null
            ? html``
            : html`<path class="range" d="M${inside(limits.low)} ${y}H${inside(limits.high)}M${inside(limits.low)} ${y - 4}v8M${inside(limits.high)} ${y - 4}v8"/>`,
          html`<circle class="mean" cx="${scale.at(value)}" cy="${y}" r="3.4"/>`,
        ];
      }),
    ],
  });
}
