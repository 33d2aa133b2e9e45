/**
 * Balls in the air and where they land: how do they fly, where do they end, and how much of that is the air's doing?
 *
 * Side view and view from above share the distance axis, and one scale holds in all directions, so that a steep descent looks steep
 * and a long pattern long. What was measured is a dot and a full line, what it would be in reference air a diamond and a dashed
 * one: shapes tell them apart, not colours. Everything is drawn in the colour of the text around it, unless a page has others.
 */
import type { Unit } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { formatNumber, unitSuffix } from "../../../shared/quantity.ts";
import { mean } from "../../../shared/statistics/summary.ts";
import type { Ground, Place } from "../../flight/shown-flight.ts";
import { html, type Markup } from "../html/markup.ts";
import type { Drawing } from "./figure.ts";
import { type Panel, panelsOf } from "./flight-panels.ts";
import { tenth } from "./scale.ts";

export interface PicturedShot {
  /** What it is called: `shot 3`, `line 14`. */
  readonly name: string;
  /** Its way through the air, as the model has it; empty where there is none. */
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
  /** The probability with which the ellipses hold the next shot; null for no ellipses. */
  readonly share: number | null;
  /** Groups of shots that the axes must hold as well, so that pictures beside each other have the same. */
  readonly with?: readonly (readonly PicturedShot[])[];
}

/** Side view and view from above. Null where no way through the air is known. */
export function flightDrawing(drawing: FlightDrawing, width = 400): Drawing | null {
  const hasPath = drawing.shots.some(({ path }) => path.length > 0);
  return hasPath ? drawn(drawing, ["side", "above"], width) : null;
}

/** Where the balls landed, close up. Null where that is not known of any. */
export function landingDrawing(drawing: FlightDrawing, width = 250): Drawing | null {
  const isKnown = drawing.shots.some(({ landing }) => landing !== null);
  return isKnown ? drawn(drawing, ["landing"], width) : null;
}

const TITLE = 22;
const GAP = 8;

function drawn(drawing: FlightDrawing, views: readonly Panel["view"][], width: number): Drawing {
  const shots = drawing.shots.filter(({ path, landing }) => path.length > 0 || landing !== null);
  let y = TITLE;
  const placed = panelsOf({ ...drawing, shots }, views, width).map(({ height, body }) => {
    const group = html`<g transform="translate(0 ${y})">${body}</g>`;
    y = tenth(y + height + GAP);
    return group;
  });
  const words = inWords({ ...drawing, shots });
  const isLanding = views.includes("landing");
  return {
    width,
    height: y,
    alternative: [
      `${drawing.title}, ${isLanding ? "landings" : "flights"} of ${plural(shots.length, "shot")}.`,
      ...words.carries,
      ...(isLanding ? [] : words.top),
    ].join(" "),
    body: [html`<text class="title" x="8" y="12">${drawing.title}</text>`, ...placed],
    caption: (isLanding ? words.averages : words.top).join(" "),
  };
}

/** A picture that stands alone as a file, with its key: it brings the colours of a light or a dark surface with it. */
export function standalone({ width, height, alternative, body }: Drawing, drawing: FlightDrawing): string {
  const LINE = 15;
  const lines = keyOf(drawing);
  const placed = lines.map(
    (line, place) => html`<g transform="translate(12 ${tenth(height + GAP + LINE * place)})">${line}</g>`,
  );
  const whole = tenth(height + GAP + LINE * lines.length);
  return `${html`<svg style="color-scheme:light dark;color:CanvasText;background:Canvas" xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 ${width} ${whole}" width="${width}" height="${whole}" font-family="system-ui, sans-serif" font-size="10" fill="currentColor" stroke="none"><title>${drawing.title}</title><desc>${alternative}</desc>${body}${placed}</svg>`}\n`;
}

function keyOf({ shots, landing, share }: FlightDrawing): Markup[] {
  const ellipse =
    share === null ? "" : `; the ellipse holds the next shot with ${Math.round(100 * share)} % probability`;
  return [
    shots.some((shot) => shot.landing !== null)
      ? html`<circle r="3"/><text x="9" y="3">${landing}${ellipse}</text>`
      : null,
    shots.some(({ standard }) => standard !== null)
      ? html`<path d="M0 -4l4 4l-4 4l-4 -4Z" fill="none" stroke="currentColor"/><text x="9" y="3">in reference air, an estimate${ellipse === "" ? "" : "; its ellipse is dashed"}</text>`
      : null,
    shots.some(({ path }) => path.length > 0)
      ? html`<path d="M-5 0h10" stroke="currentColor" stroke-opacity="0.55"/><text x="9" y="3">the flight model's way through the air, an estimate</text>`
      : null,
  ].filter((line) => line !== null);
}

/** What the picture tells: sentences. */
function inWords({ shots, unit, landing }: FlightDrawing) {
  const spoken = (meters: number) => formatNumber(meters, unit, 1);
  const side = (z: number) => {
    const amount = spoken(Math.abs(z));
    if (amount === `0${unitSuffix(unit)}`) return "on the target line";
    return `${amount} ${z < 0 ? "left" : "right"}`;
  };
  const known = [
    { name: landing, places: shots.flatMap((shot) => shot.landing ?? []) },
    { name: "in reference air, an estimate", places: shots.flatMap(({ standard }) => standard ?? []) },
  ].filter(({ places }) => places.length > 0);
  const onAverage = (meters: readonly number[]) => spoken(mean(meters) as number); // of one at least
  const carriesOf = (places: readonly Ground[]) => places.map(({ x, z }) => Math.sqrt(x * x + z * z));
  const tops = shots.flatMap(({ path }) => (path.length === 0 ? [] : Math.max(...path.map(({ y }) => y))));
  const many = tops.length === 1 ? "" : " on average";
  return {
    carries: known.map(({ name, places }) => {
      const carries = carriesOf(places);
      const sides = places.map(({ z }) => z);
      const [least, most] = [Math.min(...carries), Math.max(...carries)].map(spoken);
      const carry =
        least === most ? `carry ${least}` : `carry ${least} to ${most}, on average ${onAverage(carries)}`;
      const [left, right] = [side(Math.min(...sides)), side(Math.max(...sides))];
      return `${capital(name)}: ${carry}; ${left === right ? left : `from ${left} to ${right}`}.`;
    }),
    averages: [
      `Average carry ${known.map(({ name, places }) => `${onAverage(carriesOf(places))} ${name}`).join("; ")}.`,
    ],
    top: tops.length === 0 ? [] : [`Highest point ${onAverage(tops)}${many}, an estimate.`],
  };
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
