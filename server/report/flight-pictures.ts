/** How the ball flew, where it landed, started and bent, block beside block: what became of the shots? */
import type { Metric } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";
import { placeOf } from "../flight/conditions.ts";
import { type ShownFlight, shownFlight } from "../flight/shown-flight.ts";
import { type PicturedBlock, pointsOf, shownAs } from "./goal-picture.ts";
import { html, type Markup } from "./html/markup.ts";
import { cloudPicture } from "./pictures/cloud.ts";
import { figure } from "./pictures/figure.ts";
import { flightDrawing, landingDrawing, type PicturedShot } from "./pictures/flight.ts";

type Around = Omit<PicturedBlock, "name">;

/** The ellipses hold the next shot with this probability. */
const LANDING_SHARE = 0.8;

/** So many shots of a block are drawn at most. */
const MOST_SHOTS = 200;

/** What tells how a ball bends, the best first. */
const CURVES = ["curve", "spin-axis", "face-to-path"] as const;

/**
 * For each of these blocks the flights from the side and from above, the landing pattern, and start line against curve; none of
 * what was not measured. Null where nothing was. Estimates of the flight model are made here, for the shots that are shown.
 */
export function flightPictures(blocks: readonly string[], around: Around): Markup | null {
  const curve = CURVES.find((name) =>
    shotsOf(blocks, around).some(({ values }) => values[name] !== undefined),
  );
  const flown = blocks.map((name) => ({ name, shots: picturedShots(name, around) }));
  const all = flown.map(({ shots }) => shots);
  const rows = flown
    .map(({ name, shots }) => [
      ...flights(name, shots, all, around),
      ...(curve === undefined ? [] : startAgainstCurve(name, curve, blocks, around)),
    ])
    .filter((row) => row.length > 0);
  if (rows.length === 0) return null;
  return html`<p class="soft key">${keyTo(all.flat(), around)}</p>
<div class="flights">${rows.map((row) => html`<div class="row">${row}</div>\n`)}</div>\n`;
}

function flights(
  title: string,
  shots: readonly PicturedShot[],
  all: readonly (readonly PicturedShot[])[],
  around: Around,
): Markup[] {
  const unit = around.session.input.metrics.get("carry")?.unit;
  if (unit === undefined) return [];
  const drawing = { title, shots, unit, landing: "measured", share: LANDING_SHARE, with: all };
  return [flightDrawing(drawing), landingDrawing(drawing)].flatMap((drawn) =>
    drawn === null ? [] : [figure(drawn)],
  );
}

type Flown = PicturedShot & Pick<ShownFlight, "noPath">;

function picturedShots(name: string, { counted, session }: Around): Flown[] {
  const { conditions } = session.input.session;
  return (counted.get(name) ?? []).slice(0, MOST_SHOTS).map((shot) => ({
    name: `line ${shot.row.line}`,
    ...shownFlight(shot, conditions),
  }));
}

/** How to read the pictures; what of it is an estimate; and why something is not shown. Sentences. */
function keyTo(shots: readonly Flown[], { counted, session }: Around): string {
  const place = placeOf(session.input.session.conditions);
  const has = {
    landing: shots.some(({ landing }) => landing !== null),
    standard: shots.some(({ standard }) => standard !== null),
    path: shots.some(({ path }) => path.length > 0),
  };
  const air = typeof place === "string" ? "reference air" : "the session's air";
  return [
    has.landing
      ? `Dots are where the balls landed; the next shot lands in the full ellipse with ${100 * LANDING_SHARE} % probability, if shots go on scattering like these.`
      : "",
    has.standard
      ? "Diamonds, with the dashed ellipse, are where a new ball would have landed in reference air (15 °C, 1013 hPa, dry, still): an estimate of the flight model."
      : "",
    has.path
      ? `Thin curves are the model's ways through ${air}, fitted to where the balls landed: an estimate.`
      : "",
    has.landing && !has.path
      ? `The ways through the air are not estimated. ${shots.find(({ noPath }) => noPath !== null)?.noPath ?? ""}`
      : "",
    has.path && typeof place === "string" ? `Nothing is brought to reference air: ${uncapital(place)}` : "",
    [...counted.values()].some(({ length }) => length > MOST_SHOTS)
      ? `Of a block the first ${MOST_SHOTS} flights are drawn.`
      : "",
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

/** A sentence after a colon, in typographic quotation marks. */
function uncapital(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1).replace(/`([^`]*)`/g, "“$1”");
}

/** With the same axes for all blocks. */
function startAgainstCurve(name: string, curve: string, blocks: readonly string[], around: Around): Markup[] {
  const block = { ...around, name };
  const [x, y] = [shownAs("start-direction", block), shownAs(curve, block)];
  const points = pointsOf(around.counted.get(name) ?? [], "start-direction", curve);
  if (x === null || y === null) return [];
  const picture = cloudPicture({
    title: name,
    points,
    x,
    y,
    share: null,
    height: 150,
    with: pointsOf(shotsOf(blocks, around), "start-direction", curve),
    alternative: `${name}: ${points.length} shots over start direction and ${words(y.metric)}.`,
  });
  return picture === null ? [] : [picture];
}

function shotsOf(blocks: readonly string[], { counted }: Around): Shot[] {
  return blocks.flatMap((name) => counted.get(name) ?? []);
}

function words({ name }: Metric): string {
  return name.replaceAll("-", " ");
}
