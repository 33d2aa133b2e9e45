/** Shots whose readings do not fit together: a value that was measured, against what the others make of it. */
import type { Conditions } from "../../shared/plan-model.ts";
import { COEFFICIENTS } from "./coefficients.ts";
import { placeOf } from "./conditions.ts";
import { DEGREE } from "./constants.ts";
import { curveFrom, deliveryFrom, type Values } from "./derived-metrics.ts";
import { type Flight, fly } from "./fly.ts";
import { type ClubDelivery, FACE_SHARE, type Strike, startByShare, strikeOf } from "./impact.ts";
import { LAUNCH, launchFrom, measured, type Readings } from "./measured-launch.ts";
import { validityOf } from "./validity.ts";

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
  return [...fromClub(values), ...fromCurve(values), ...fromFlight(values, conditions)];
}

function measuredOnly({ values, derived }: Readings): Values {
  if (derived.length === 0) return values;
  const kept: Record<string, number> = {};
  for (const [metric, value] of Object.entries(values)) if (!derived.includes(metric)) kept[metric] = value;
  return kept;
}

/** None where the reading is inside. */
function outside(found: Disagreement): Disagreement[] {
  return found.measured < found.low || found.measured > found.high ? [found] : [];
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
    return outside({ metric, measured, low, high, from: CLUB, by: "geometry", reason });
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
  return outside({
    metric: "curve",
    measured,
    low: made - slack,
    high: made + slack,
    from,
    by: "geometry",
    reason,
  });
}

/** How far from the model a flight may be before it is worth a look: balls differ, and so do coefficients. */
const CARRY_SHARE = { supported: 0.15, extrapolated: 0.25 } as const;

/** Carry and curve against the flight model, of a ball that carries as stated. */
function fromFlight(values: Values, conditions: Conditions | null): Disagreement[] {
  if (conditions === null || (values.carry === undefined && values.curve === undefined)) return [];
  const place = placeOf(conditions);
  const shot = typeof place === "string" ? place : measured({ values, derived: [] }, LAUNCH);
  if (typeof shot === "string" || typeof place === "string") return [];
  const launch = launchFrom(shot);
  const { status } = validityOf(launch, place.surroundings);
  if (status === "unsupported") return [];
  const flight = fly(launch, place.surroundings, COEFFICIENTS.ss94_flat);
  /** How far the other coefficient set is from this one: looked at only where it matters. */
  let other: Flight | undefined;
  const uncertainty = (metric: "carry" | "curve") => {
    other ??= fly(launch, place.surroundings, COEFFICIENTS.ss94);
    return Math.abs(flight[metric] - other[metric]);
  };
  return (["carry", "curve"] as const).flatMap((metric) => {
    const reading = values[metric];
    const made = flight[metric] * place.carryFactor;
    const slack = metric === "carry" ? CARRY_SHARE[status] * made : 8 + 0.5 * Math.abs(made);
    if (reading === undefined || Math.abs(reading - made) <= slack) return [];
    const most = slack + uncertainty(metric);
    return outside({
      metric,
      measured: reading,
      low: made - most,
      high: made + most,
      from: LAUNCH,
      by: "model",
      reason: OTHER_BALL,
    });
  });
}

const OTHER_BALL =
  "A ball that flies unlike a new one does that, wind that was not as stated, and a spin that was not measured.";
