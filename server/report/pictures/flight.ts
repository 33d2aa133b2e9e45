/**
 * Balls in the air and where they land: how do they fly, where do they end, and how much of that is the air's doing?
 *
 * Side view and view from above share the distance axis, and one scale holds in all directions, so that a steep descent looks steep
 * and a long pattern long. What was measured is a dot and a full line, what it would be in reference air a diamond and a dashed
 * one: shapes tell them apart, not colours. Everything is drawn in the colour of the text around it.
 */
import type { Unit } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { formatNumber, unitSuffix } from "../../../shared/quantity.ts";
import { html, type Markup } from "../html/markup.ts";
import { type Panel, panelsOf } from "./flight-panels.ts";

/** A place in metres: towards the target, up, and to the right. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export type Ground = Pick<Place, "x" | "z">;

export interface PicturedShot {
  /** What it is called: `shot 3`, `line 14`. */
  readonly name: string;
  /** Its way through the air as the model has it; empty where there is none. */
  readonly path: readonly Place[];
  /** Where it landed; null where that is not known. */
  readonly landing: Ground | null;
  /** Where it would have landed in reference air; null where that is not known. */
  readonly standard: Ground | null;
}

export interface FlightDrawing {
  readonly title: string;
  readonly shots: readonly PicturedShot[];
  /** Of the distances. */
  readonly unit: Unit;
  /** What the dots are: `measured`, or `in the air of the day (estimate)`. */
  readonly landing: string;
  /** The share of such shots that the ellipses would hold; null for none. */
  readonly share: number | null;
}

/** Side view and view from above. Null where nothing is known of any shot. */
export function flightPicture(drawing: FlightDrawing): string | null {
  return picture(drawing, ["side", "above"]);
}

/** Where the balls landed, close up. Null where nothing is known of any shot. */
export function landingPicture(drawing: FlightDrawing): string | null {
  return picture(drawing, ["landing"]);
}

/** A picture that stands alone as a file: it brings the colours of a light or a dark surface with it. */
export function standalone(svg: string): string {
  return `${svg.replace("<svg ", '<svg style="color-scheme:light dark;color:CanvasText;background:Canvas" ')}\n`;
}

const [WIDE, NARROW] = [640, 420];
const TITLE = 22;
const GAP = 8;
const LINE = 15;

function picture(drawing: FlightDrawing, views: readonly Panel["view"][]): string | null {
  const shots = drawing.shots.filter(({ path, landing }) => path.length > 0 || landing !== null);
  if (shots.length === 0) return null;
  const width = views.includes("side") ? WIDE : NARROW;
  const panels = panelsOf({ ...drawing, shots }, views, width);
  let y = TITLE;
  const placed = panels.map(({ height, body }) => {
    const group = html`<g transform="translate(0 ${y})">${body}</g>`;
    y += height + GAP;
    return group;
  });
  const lines = legend({ ...drawing, shots }, views.includes("side"));
  const placedLines = lines.map(
    (line, place) => html`<g transform="translate(12 ${y + GAP + LINE * place})">${line}</g>`,
  );
  const height = y + GAP + LINE * lines.length;
  const text = alternativeOf({ ...drawing, shots });
  return html`<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="system-ui, sans-serif" font-size="10" fill="currentColor" stroke="none"><title>${drawing.title}</title><desc>${text}</desc><text x="8" y="14" font-size="12" font-weight="600">${drawing.title}</text>${placed}${placedLines}</svg>`
    .text;
}

function legend({ shots, landing, share }: FlightDrawing, hasPaths: boolean): Markup[] {
  const ellipse =
    share === null || shots.length < 3
      ? ""
      : `; the ellipse would hold ${Math.round(100 * share)} % of such shots`;
  return [
    shots.some((shot) => shot.landing !== null)
      ? html`<circle r="3"/><text x="9" y="3">${landing}${ellipse}</text>`
      : null,
    shots.some(({ standard }) => standard !== null)
      ? html`<path d="M0 -4l4 4l-4 4l-4 -4Z" fill="none" stroke="currentColor"/><text x="9" y="3">in reference air, an estimate${ellipse === "" ? "" : "; its ellipse is dashed"}</text>`
      : null,
    hasPaths && shots.some(({ path }) => path.length > 0)
      ? html`<path d="M-5 0h10" stroke="currentColor" stroke-opacity="0.55"/><text x="9" y="3">the flight model's way through the air, an estimate</text>`
      : null,
  ].filter((line) => line !== null);
}

/** What the picture tells, for those who cannot see it. */
function alternativeOf({ shots, unit, landing }: FlightDrawing): string {
  const spoken = (meters: number) => formatNumber(meters, unit, 1);
  const sentence = (words: string, places: readonly Ground[]) => {
    const carries = places.map(({ x, z }) => Math.hypot(x, z));
    const sides = places.map(({ z }) => z);
    const average = carries.reduce((sum, carry) => sum + carry, 0) / carries.length;
    const [least, most] = [Math.min(...carries), Math.max(...carries)].map(spoken);
    const carry =
      least === most ? `carry ${least}` : `carry ${least} to ${most}, on average ${spoken(average)}`;
    const [left, right] = [Math.min(...sides), Math.max(...sides)];
    return `${words}: ${carry}; ${left === right ? side(left) : `from ${side(left)} to ${side(right)}`}.`;
  };
  const side = (z: number) => {
    const amount = spoken(Math.abs(z));
    if (amount === `0${unitSuffix(unit)}`) return "on the target line";
    return `${amount} ${z < 0 ? "left" : "right"}`;
  };
  const top = Math.max(0, ...shots.flatMap(({ path }) => path.map(({ y }) => y)));
  const known = shots.flatMap(({ landing: place }) => place ?? []);
  const standard = shots.flatMap(({ standard: place }) => place ?? []);
  return [
    `${plural(shots.length, "shot")}.`,
    known.length === 0 ? "" : sentence(capital(landing), known),
    standard.length === 0 ? "" : sentence("In reference air, an estimate", standard),
    top === 0 ? "" : `Highest point ${spoken(top)}, by the model.`,
  ]
    .filter((part) => part !== "")
    .join(" ");
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
