/** A count as it grew, shot by shot, against what was needed: when was it settled? */
import { html, type Markup } from "../html/markup.ts";
import { figure } from "./figure.ts";
import { scaleOf, tenth } from "./scale.ts";

export interface RunningCount {
  /** Shot by shot whether it counts; undefined where that is unknown. */
  readonly counts: readonly (boolean | undefined)[];
  readonly bound: "least" | "most";
  readonly needed: number;
  readonly outOf: number;
}

const WIDTH = 320;
const HEIGHT = 60;
const [LEFT, RIGHT, TOP] = [26, WIDTH - 10, 6];

/** The picture; null where nothing is known of any shot. The shaded area is where the goal cannot be met any more. */
export function runningCount({ counts, bound, needed, outOf }: RunningCount): Markup | null {
  if (counts.every((counted) => counted === undefined)) return null;
  const x = scaleOf([0, outOf], { from: LEFT, to: RIGHT, unit: 1, ticks: 6 });
  const y = scaleOf([0, Math.max(needed, outOf)], { from: HEIGHT, to: TOP, unit: 1, ticks: 3 });
  let standing = 0;
  const steps = counts.slice(0, outOf).map((counted, shot) => {
    if (counted === true) standing++;
    return `H${x.at(shot + 1)}V${y.at(standing)}`;
  });
  const lost =
    bound === "least"
      ? `M${x.at(outOf - needed)} ${y.at(0)}L${x.at(outOf)} ${y.at(needed)}V${y.at(0)}Z`
      : `M${x.at(needed)} ${y.at(needed)}H${x.at(outOf)}V${y.at(outOf)}Z`;
  return figure({
    width: WIDTH,
    height: HEIGHT + 26,
    alternative: `The count ended at ${standing} after ${Math.min(counts.length, outOf)} shots; at ${bound} ${needed} of ${outOf} were asked for.`,
    caption: `The count, shot by shot. Dashed: ${needed}. Shaded: ${bound === "least" ? "out of reach" : "too many"}.`,
    body: [
      html`<path class="lost" d="${lost}"/>`,
      ...y.ticks.map(
        (tick) =>
          html`<line class="grid" x1="${LEFT}" y1="${y.at(tick)}" x2="${RIGHT}" y2="${y.at(tick)}"/><text class="tick" x="${LEFT - 4}" y="${tenth(y.at(tick) + 3)}" text-anchor="end">${tick}</text>`,
      ),
      ...x.ticks.map(
        (tick) =>
          html`<text class="tick" x="${x.at(tick)}" y="${HEIGHT + 11}" text-anchor="middle">${tick}</text>`,
      ),
      html`<text class="name" x="${(LEFT + RIGHT) / 2}" y="${HEIGHT + 22}" text-anchor="middle">shots</text>`,
      html`<line class="need" x1="${LEFT}" y1="${y.at(needed)}" x2="${RIGHT}" y2="${y.at(needed)}"/>`,
      html`<path class="run" d="M${x.at(0)} ${y.at(0)}${steps.join("")}"/>`,
    ],
  });
}
