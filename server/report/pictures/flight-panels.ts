/** The views of balls in the air, one under the other. */
import { unitSuffix } from "../../../shared/quantity.ts";
import { cloudOf, ellipseOf, factorForNextShot } from "../../../shared/statistics/ellipse.ts";
import type { Ground } from "../../flight/shown-flight.ts";
import { html, type Markup } from "../html/markup.ts";
import type { FlightDrawing, PicturedShot } from "./flight.ts";
import { scaleOf, tenth } from "./scale.ts";

export interface Panel {
  readonly view: "side" | "above" | "landing";
  readonly height: number;
  readonly body: readonly Markup[];
}

const [LEFT, RIGHT] = [54, 10];
/** Room above and below a view for its name and its numbers. */
const [ABOVE, BELOW] = [14, 16];
/** No view is higher: patterns far to one side are drawn smaller. */
const HIGHEST = 340;

/** The views asked for, in this order, in a picture of this width: a metre is as long in all of them. */
export function panelsOf(
  drawing: FlightDrawing,
  views: readonly Panel["view"][],
  width: number,
): readonly Panel[] {
  const extents = views.map((view) => ({ view, extent: extentOf(drawing, view) }));
  const perMetre = Math.min(
    ...extents.flatMap(({ extent: { along, across } }) => [
      (width - RIGHT - LEFT) / spanOf(along),
      HIGHEST / spanOf(across),
    ]),
  );
  return extents.map(({ view, extent }) => panelOf(drawing, view, extent, perMetre));
}

/** The numbers that a view must hold, in metres. */
interface Extent {
  readonly along: readonly number[];
  readonly across: readonly number[];
}

function extentOf({ shots, share, unit, with: others = [] }: FlightDrawing, view: Panel["view"]): Extent {
  const groups = [shots, ...others];
  const all = groups.flat();
  const paths = view === "landing" ? [] : all.flatMap(({ path }) => path);
  const grounds = [
    ...all.flatMap(({ landing, standard }) => [landing, standard].flatMap((at) => at ?? [])),
    ...groups.flatMap((group) => patternsOf(group, share)).flatMap(({ outline }) => outline),
  ];
  const along = [...paths, ...grounds].map(({ x }) => x);
  const aside = [...paths, ...grounds].map(({ z }) => z);
  if (view === "landing") return { along: widened(along, unit.factor), across: widened(aside, unit.factor) };
  const margin = 0.03 * spanOf([0, ...along]);
  const across = view === "side" ? [0, margin, ...paths.map(({ y }) => y)] : widened(aside, margin);
  return { along: [0, ...along], across };
}

function widened(values: readonly number[], margin: number): number[] {
  return [least(values) - margin, most(values) + margin];
}

function panelOf(drawing: FlightDrawing, view: Panel["view"], extent: Extent, perMetre: number): Panel {
  const { shots, unit, share } = drawing;
  const isSide = view === "side";
  const isClose = view === "landing";
  const [x, y] = axesOf(extent, perMetre, unit.factor, isSide);
  const pixel = (at: Ground): Pixel => [x.at(at.x), y.at(isSide ? 0 : at.z)];
  return {
    view,
    height: ABOVE + y.size + BELOW,
    body: [
      html`<text class="name" x="${LEFT}" y="9">${NAMES[view]}, in ${unitSuffix(unit).trim()}</text>`,
      ...gridOf(x, y, drawing, view),
      ...(isClose ? [] : shots)
        .filter(({ path }) => path.length > 0)
        .map(({ path }) => {
          const points = path.map((at): Pixel => [x.at(at.x), y.at(isSide ? at.y : at.z)]);
          return html`<path class="way" d="${lineOf(points)}" fill="none" stroke="currentColor" stroke-opacity="0.55"/>`;
        }),
      ...(isSide ? [] : patternsOf(shots, share)).map(
        ({ outline, isStandard }) =>
          html`<path class="pattern${isStandard ? " standard" : ""}" d="${lineOf(outline.map(pixel))}Z" fill="none" stroke="currentColor" stroke-dasharray="${isStandard ? "4 3" : "none"}"/>`,
      ),
      ...shots.flatMap(({ name, landing, standard }) =>
        landingMarks(name, landing, standard, pixel, isClose ? 3 : 2.4),
      ),
    ],
  };
}

const NAMES: Readonly<Record<Panel["view"], string>> = {
  side: "From the side",
  above: "From above, target on the right",
  landing: "Landings, target on the right",
};

/** From metres to places on the picture, with ticks at round numbers. */
interface Axis {
  readonly ticks: readonly number[];
  readonly size: number;
  at(value: number): number;
}

/** Along and across, each ending where its numbers end. */
function axesOf(
  { along, across }: Extent,
  perMetre: number,
  unit: number,
  isUpwards: boolean,
): [x: Axis, y: Axis] {
  const ticksWithin = (values: readonly number[], ticks: number) =>
    scaleOf(values, { from: 0, to: 1, unit, ticks }).ticks.filter(
      (tick) => tick >= least(values) && tick <= most(values),
    );
  const [start, low, high] = [least(along), least(across), most(across)];
  return [
    {
      ticks: ticksWithin(along, (perMetre * spanOf(along)) / 50),
      size: tenth(perMetre * spanOf(along)),
      at: (value) => tenth(LEFT + perMetre * (value - start)),
    },
    {
      ticks: ticksWithin(across, (perMetre * spanOf(across)) / 24),
      size: tenth(perMetre * spanOf(across)),
      at: (value) => tenth(ABOVE + perMetre * (isUpwards ? high - value : value - low)),
    },
  ];
}

function gridOf(x: Axis, y: Axis, { unit }: FlightDrawing, view: Panel["view"]): Markup[] {
  const [top, bottom] = [ABOVE, ABOVE + y.size];
  const right = tenth(LEFT + x.size);
  const number = (meters: number) => String(Number((meters / unit.factor).toPrecision(6)));
  const side = (z: number) => (view === "side" || z === 0 ? "" : z < 0 ? " left" : " right");
  return [
    ...x.ticks.map(
      (tick) =>
        html`<line x1="${x.at(tick)}" y1="${top}" x2="${x.at(tick)}" y2="${bottom}" stroke="currentColor" stroke-opacity="0.15"/><text class="tick" x="${x.at(tick)}" y="${bottom + 11}" text-anchor="middle">${number(tick)}</text>`,
    ),
    ...y.ticks.map(
      (tick) =>
        html`<line x1="${LEFT}" y1="${y.at(tick)}" x2="${right}" y2="${y.at(tick)}" stroke="currentColor" stroke-opacity="${tick === 0 ? "0.6" : "0.15"}"/><text class="tick" x="${LEFT - 4}" y="${tenth(y.at(tick) + 3)}" text-anchor="end">${number(Math.abs(tick))}${side(tick)}</text>`,
    ),
  ];
}

type Pixel = readonly [x: number, y: number];

/** A dot where it landed, a diamond where it would in reference air, and a line for what the air did. */
function landingMarks(
  name: string,
  landing: Ground | null,
  standard: Ground | null,
  pixel: (at: Ground) => Pixel,
  size: number,
): Markup[] {
  const from = landing === null ? null : pixel(landing);
  const to = standard === null ? null : pixel(standard);
  return [
    from === null || to === null
      ? html``
      : html`<line class="way" x1="${from[0]}" y1="${from[1]}" x2="${to[0]}" y2="${to[1]}" stroke="currentColor" stroke-opacity="0.4"/>`,
    from === null
      ? html``
      : html`<circle class="landed" cx="${from[0]}" cy="${from[1]}" r="${size}"><title>${name}</title></circle>`,
    to === null
      ? html``
      : html`<path class="standard" d="M${to[0]} ${tenth(to[1] - size - 1)}l${size + 1} ${size + 1}l${-size - 1} ${size + 1}l${-size - 1} ${-size - 1}Z" fill="none" stroke="currentColor"><title>${name}</title></path>`,
  ];
}

/** The outline of an ellipse on the ground, of what was measured or of what it would be in reference air. */
interface Pattern {
  readonly outline: readonly Ground[];
  readonly isStandard: boolean;
}

const POINTS = 48;

/** Of fewer the ellipse of the next shot is so wide that it says nothing, and would shrink the picture. */
const LEAST_SHOTS = 5;

/** The ellipses that hold the next shot with this probability. None of few shots. */
function patternsOf(shots: readonly PicturedShot[], share: number | null): Pattern[] {
  if (share === null) return [];
  const patterns = [
    { places: shots.flatMap(({ landing }) => landing ?? []), isStandard: false },
    { places: shots.flatMap(({ standard }) => standard ?? []), isStandard: true },
  ];
  return patterns.flatMap(({ places, isStandard }) => {
    const cloud = cloudOf(
      places.map(({ x }) => x),
      places.map(({ z }) => z),
    );
    const factor = factorForNextShot(places.length, share);
    if (cloud === undefined || factor === undefined || cloud.n < LEAST_SHOTS) return [];
    const { long, short, angle } = ellipseOf(cloud, factor);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const outline = Array.from({ length: POINTS }, (_, place): Ground => {
      const turn = (2 * Math.PI * place) / POINTS;
      const [one, other] = [long * Math.cos(turn), short * Math.sin(turn)];
      return { x: cloud.meanX + one * cos - other * sin, z: cloud.meanY + one * sin + other * cos };
    });
    return [{ outline, isStandard }];
  });
}

function lineOf(points: readonly Pixel[]): string {
  return `M${points.map(([x, y]) => `${x} ${y}`).join("L")}`;
}

function least(values: readonly number[]): number {
  return values.reduce((one, other) => Math.min(one, other), Number.POSITIVE_INFINITY);
}

function most(values: readonly number[]): number {
  return values.reduce((one, other) => Math.max(one, other), Number.NEGATIVE_INFINITY);
}

function spanOf(values: readonly number[]): number {
  return most(values) - least(values);
}
