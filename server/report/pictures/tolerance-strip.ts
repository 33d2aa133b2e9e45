/** Every shot against a tolerance: how far off were the misses, to which side, and when? The first shot is on top. */
import type { Interval } from "../../../shared/interval.ts";
import { html, type Markup } from "../html/markup.ts";
import { axisBelow, type Shown } from "./axis.ts";
import { figure } from "./figure.ts";
import { shotMark } from "./marks.ts";
import { scaleOf } from "./scale.ts";

export interface StripShot {
  /** SI, target frame. */
  readonly value: number;
  readonly isHit: boolean;
}

const WIDTH = 320;
const MARGIN = 16;
const PITCH = 6;
/** More shots than this share the height of so many. */
const MOST_ROWS = 24;
/** More marks say no more. */
const MOST_MARKS = 500;

/** The picture; null without shots. `band` holds the numbers that meet what is asked. */
export function toleranceStrip(
  shots: readonly StripShot[],
  band: Interval,
  shown: Shown,
  asked: string,
): Markup | null {
  if (shots.length === 0) return null;
  const marked = shots.slice(0, MOST_MARKS);
  const scale = scaleOf([band.low, band.high, ...marked.map(({ value }) => value)], {
    from: MARGIN,
    to: WIDTH - MARGIN,
    unit: shown.metric.unit.factor,
    ticks: 6,
  });
  const bottom = 4 + PITCH * Math.min(marked.length, MOST_ROWS);
  const pitch = (bottom - 4) / marked.length;
  const [left, right] = [scale.at(Math.max(band.low, scale.low)), scale.at(Math.min(band.high, scale.high))];
  const hits = shots.filter(({ isHit }) => isHit).length;
  const more = shots.length - marked.length;
  return figure({
    width: WIDTH,
    height: bottom + 28,
    alternative: `${asked}: ${hits} of ${shots.length} shots inside, ${shots.length - hits} outside: ${sides(shots, band)}.`,
    caption: `Every shot, the first on top.${more > 0 ? ` ${more} more shots are not drawn.` : ""}`,
    body: [
      html`<rect class="band" x="${left}" y="0" width="${right - left}" height="${bottom}"/>`,
      ...axisBelow(scale, shown, 0, bottom),
      ...marked.map(({ value, isHit }, place) =>
        shotMark(isHit ? "hit" : "miss", scale.at(value), 4 + pitch * (place + 0.5) - 2),
      ),
    ],
  });
}

/** `2 below, 1 above` */
function sides(shots: readonly StripShot[], { low, high }: Interval): string {
  const below = shots.filter(({ value, isHit }) => !isHit && value < (low + high) / 2 && value <= low);
  const misses = shots.filter(({ isHit }) => !isHit);
  if (!Number.isFinite(low) || !Number.isFinite(high)) return `${misses.length} beyond the limit`;
  return `${below.length} to the left of it, ${misses.length - below.length} to the right`;
}
