/** The views of balls in the air, one under the other. */
import { unitSuffix } from "../../../shared/quantity.ts";
import { cloudOf, ellipseOf, factorForShots } from "../../../shared/statistics/ellipse.ts";
import { html, type Markup } from "../html/markup.ts";
import type { FlightDrawing, Ground } from "./flight.ts";
import { type Scale, scaleOf, tenth } from "./scale.ts";

export interface Panel {
  readonly view: "side" | "above" | "landing";
  readonly height: number;
  readonly body: readonly Markup[];
}

const [LEFT, RIGHT] = [56, 20];
/** Room above and below a view for its name and its numbers. */
const [ABOVE, BELOW] = [14, 16];
/** No view is higher: patterns far to one side are drawn smaller. */
const HIGHEST = 340;

/** The views asked for, in this order, in a picture of this width. */
export function panelsOf(
  drawing: FlightDrawing,
  views: readonly Panel["view"][],
  width: number,
): readonly Panel[] {
  return views.map((view) => panelOf(drawing, view, width));
}

function panelOf(drawing: FlightDrawing, view: Panel["view"], width: number): Panel {
  const { shots, unit } = drawing;
  const grounds = shots.flatMap(({ landing, standard }) => [landing, standard].flatMap((at) => at ?? []));
  const paths = view === "landing" ? [] : shots.flatMap(({ path }) => path);
  const close = view === "landing";
  const along = [...paths, ...grounds].map(({ x }) => x);
  const room = close ? 0.15 * span(along) + 3 * unit.factor : 0;
  const distances = [Math.min(...along) - room, Math.max(...along) + room, ...(close ? [] : [0])];
  const across =
    view === "side"
      ? [0, 0.02 * span(distances), ...paths.map(({ y }) => y)]
      : [...paths, ...grounds].flatMap(({ z }) => [z - room, z + room]);
  const margin = view === "above" ? 0.03 * span(distances) : 0;
  const [x, y] = equalScales(distances, [Math.min(...across) - margin, Math.max(...across) + margin], {
    unit: unit.factor,
    width,
    isUpwards: view === "side",
  });
  const marks = view === "side" ? grounds.map(() => 0) : null;
  return {
    view,
    height: ABOVE + y.size + BELOW,
    body: [
      html`<text x="${LEFT}" y="9" opacity="0.7">${NAMES[view]}</text>`,
      ...gridOf(x.scale, y, drawing, view),
      ...shots.flatMap(({ path }) =>
        close || path.length === 0
          ? []
          : [
              html`<path d="${lineOf(path.map((at) => [x.scale.at(at.x), y.at(view === "side" ? at.y : at.z)]))}" fill="none" stroke="currentColor" stroke-opacity="0.55"/>`,
            ],
      ),
      ...(view === "side" ? [] : ellipsesOf(drawing, x.scale, y)),
      ...shots.flatMap(({ name, landing, standard }) =>
        landingMarks(name, landing, standard, (at) => [x.scale.at(at.x), y.at(marks === null ? at.z : 0)]),
      ),
    ],
  };
}

const NAMES: Readonly<Record<Panel["view"], string>> = {
  side: "From the side",
  above: "From above, the target to the right",
  landing: "Where they landed, from above, the target to the right",
};

interface Vertical {
  readonly ticks: readonly number[];
  readonly size: number;
  at(value: number): number;
}

/** Two scales with as many pixels a metre: along fills the width unless that were too high. */
function equalScales(
  along: readonly number[],
  across: readonly number[],
  { unit, width, isUpwards }: { readonly unit: number; readonly width: number; readonly isUpwards: boolean },
): [x: { scale: Scale }, y: Vertical] {
  const full = scaleOf(along, { from: LEFT, to: width - RIGHT, unit, ticks: 8 });
  const rough = scaleOf(across, { from: 0, to: 1, unit, ticks: 4 });
  const wide = (width - RIGHT - LEFT) / (full.high - full.low);
  const perMetre = Math.min(wide, HIGHEST / (rough.high - rough.low));
  const scale = scaleOf(along, {
    from: LEFT,
    to: LEFT + perMetre * (full.high - full.low),
    unit,
    ticks: 8,
  });
  const size = Math.max(8, tenth(perMetre * (rough.high - rough.low)));
  return [
    { scale },
    {
      ticks: rough.ticks,
      size,
      at: (value) => tenth(ABOVE + perMetre * (isUpwards ? rough.high - value : value - rough.low)),
    },
  ];
}

function gridOf(scale: Scale, y: Vertical, { unit }: FlightDrawing, view: Panel["view"]): Markup[] {
  const [top, bottom] = [ABOVE, ABOVE + y.size];
  const suffix = unitSuffix(unit);
  const right = scale.at(scale.high);
  const number = (meters: number) => String(Number((meters / unit.factor).toPrecision(6)));
  const side = (z: number) => (view === "side" || z === 0 ? "" : z < 0 ? " left" : " right");
  return [
    ...scale.ticks.map(
      (tick, place) =>
        html`<line x1="${scale.at(tick)}" y1="${top}" x2="${scale.at(tick)}" y2="${bottom}" stroke="currentColor" stroke-opacity="0.15"/><text x="${scale.at(tick)}" y="${bottom + 11}" text-anchor="middle" opacity="0.7">${number(tick)}${place === scale.ticks.length - 1 ? suffix : ""}</text>`,
    ),
    ...y.ticks.map(
      (tick) =>
        html`<line x1="${LEFT}" y1="${y.at(tick)}" x2="${right}" y2="${y.at(tick)}" stroke="currentColor" stroke-opacity="${tick === 0 ? "0.6" : "0.15"}"/><text x="${LEFT - 4}" y="${tenth(y.at(tick) + 3)}" text-anchor="end" opacity="0.7">${number(Math.abs(tick))}${side(tick)}</text>`,
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
): Markup[] {
  const from = landing === null ? null : pixel(landing);
  const to = standard === null ? null : pixel(standard);
  return [
    from === null || to === null
      ? html``
      : html`<line x1="${from[0]}" y1="${from[1]}" x2="${to[0]}" y2="${to[1]}" stroke="currentColor" stroke-opacity="0.4"/>`,
    from === null
      ? html``
      : html`<circle cx="${from[0]}" cy="${from[1]}" r="3"><title>${name}</title></circle>`,
    to === null
      ? html``
      : html`<path d="M${to[0]} ${tenth(to[1] - 4)}l4 4l-4 4l-4 -4Z" fill="none" stroke="currentColor"><title>${name}</title></path>`,
  ];
}

/** The ellipses of what was measured and of what it would be in reference air. */
function ellipsesOf({ shots, share }: FlightDrawing, scale: Scale, y: Vertical): Markup[] {
  if (share === null) return [];
  const patterns = [
    { places: shots.flatMap(({ landing }) => landing ?? []), dashes: "none" },
    { places: shots.flatMap(({ standard }) => standard ?? []), dashes: "4 3" },
  ];
  return patterns.flatMap(({ places, dashes }) => {
    const cloud = cloudOf(
      places.map(({ x }) => x),
      places.map(({ z }) => z),
    );
    if (cloud === undefined || cloud.n < 3) return [];
    const { long, short, angle } = ellipseOf(cloud, factorForShots(share));
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const points = Array.from({ length: 48 }, (_, place): Pixel => {
      const turn = (Math.PI * place) / 24;
      const [one, other] = [long * Math.cos(turn), short * Math.sin(turn)];
      return [scale.at(cloud.meanX + one * cos - other * sin), y.at(cloud.meanY + one * sin + other * cos)];
    });
    return [
      html`<path d="${lineOf(points)}Z" fill="none" stroke="currentColor" stroke-dasharray="${dashes}"/>`,
    ];
  });
}

function lineOf(points: readonly Pixel[]): string {
  return `M${points.map(([x, y]) => `${x} ${y}`).join("L")}`;
}

function span(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
