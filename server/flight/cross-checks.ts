/** Shots whose readings do not fit together: a value that was measured, against what the others make of it. */
import type { Conditions } from "../../shared/plan-model.ts";
import { DEGREE } from "./constants.ts";
import { curveFrom, deliveryFrom, type Values } from "./derived-metrics.ts";
import { disagreementsWithFlight } from "./flight-cross-checks.ts";
import { type ClubDelivery, FACE_SHARE, type Strike, startByShare, strikeOf } from "./impact.ts";
import { LAUNCH, launchFrom, measured, type Readings } from "./measured-launch.ts";

/** A reading outside what the others allow. SI, target frame. */
export interface Disagreement {
  readonly metric: string;
  readonly measured: number;
  readonly low: number;
  readonly high: number;
  /** The metrics that `low` and `high` come from. */
  readonly from: readonly string[];
  /** Plain geometry and the strike's; or the flight model, so that `low` and `high` are estimates. */
  readonly by: "geometry" | "model";
  /** What such a disagreement comes from, in words. A sentence. */
  readonly reason: string;
}

/** How well the club's angles are read, in our own judgement; one of an instrument is no part of this check. */
const READ_TO: ClubDelivery = {
  dynamicLoft: 2 * DEGREE,
  faceAngle: 1 * DEGREE,
  attackAngle: 1.5 * DEGREE,
  clubPath: 1 * DEGREE,
};

const CLUB = ["dynamic-loft", "face-angle", "attack-angle", "club-path"];
const OFF_CENTRE =
  "A strike away from the middle of the face does that, a wet face does, and so does a misread angle.";

/**
 * The readings of a shot that disagree with what its others make of them, beyond what readings and models leave open. Values that were
 * computed and not measured are not looked at. Without conditions nothing is said about the flight. Cost: a flight at most, and two
 * where the first disagrees.
 */
export function disagreements(readings: Readings, conditions: Conditions | null): Disagreement[] {
  const values = measuredOnly(readings);
  const launch = measured({ values, derived: [] }, LAUNCH);
  const isFlightKnown = conditions !== null && typeof launch !== "string";
  return [
    ...fromClub(values),
    ...fromCurve(values),
    ...(isFlightKnown ? disagreementsWithFlight(values, launchFrom(launch), conditions) : []),
  ].filter(({ measured, low, high }) => measured < low || measured > high);
}

function measuredOnly({ values, derived }: Readings): Values {
  if (derived.length === 0) return values;
  const kept: Record<string, number> = {};
  for (const [metric, value] of Object.entries(values)) if (!derived.includes(metric)) kept[metric] = value;
  return kept;
}

const OF_CLUB: readonly (readonly [metric: string, of: keyof Angles, reason: string])[] = [
  ["spin-loft", "spinLoft", "A misread angle does that, or a spin loft that was counted in another way."],
  ["launch-angle", "launchAngle", OFF_CENTRE],
  ["start-direction", "startDirection", OFF_CENTRE],
  ["spin-axis", "spinAxis", OFF_CENTRE],
];

/** What follows from face, path, loft and attack angle. */
function fromClub(values: Values): Disagreement[] {
  const delivery = deliveryFrom(values);
  if (delivery === undefined || OF_CLUB.every(([metric]) => values[metric] === undefined)) return [];
  const starts = [FACE_SHARE.least, FACE_SHARE.most].map((share) => startByShare(delivery, share));
  const strike = strikeOf(delivery);
  return OF_CLUB.flatMap(([metric, of, reason]) => {
    const measured = values[metric];
    const made = [strike, ...starts].map((angles) => ({ ...strike, ...angles })[of]);
    const [least, most] = [Math.min(...made), Math.max(...made)];
    if (measured === undefined || (measured >= least && measured <= most)) return [];
    const slack = spread(delivery, of);
    const [low, high] = [least - slack, most + slack];
    return [{ metric, measured, low, high, from: CLUB, by: "geometry" as const, reason }];
  });
}

type Angles = Pick<Strike, "spinLoft" | "launchAngle" | "startDirection" | "spinAxis">;

/** By how much readings of this quality leave an angle open: what each leaves, added in squares. */
function spread(delivery: ClubDelivery, of: keyof Angles): number {
  const names = Object.keys(READ_TO) as (keyof ClubDelivery)[];
  const parts = names.map((name) => {
    const [more, less] = [1, -1].map(
      (sign) => strikeOf({ ...delivery, [name]: delivery[name] + sign * READ_TO[name] })[of],
    );
    return ((more ?? 0) - (less ?? 0)) / 2;
  });
  return Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0)) + 1 * DEGREE;
}

/** Curve against where the ball started and landed: plain geometry. */
function fromCurve(values: Values): Disagreement[] {
  const { curve: measured, carry } = values;
  const made = curveFrom(values);
  if (measured === undefined || made === undefined || carry === undefined) return [];
  const slack = 3 + carry * DEGREE;
  const from = ["carry", "offline", "start-direction"];
  const reason =
    "A curve that was counted from another line does that, and so does a side that was read the wrong way round.";
  const [low, high] = [made - slack, made + slack];
  return [{ metric: "curve", measured, low, high, from, by: "geometry", reason }];
}
