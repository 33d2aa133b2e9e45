/** All that the model says of one launch. */
import { bestReachable } from "../../flight/best-carry.ts";
import {
  type BestLaunch,
  bestFreeLaunch,
  type LaunchWindow,
  launchWindow,
} from "../../flight/best-launch.ts";
import { COEFFICIENTS } from "../../flight/coefficients.ts";
import { placeOf } from "../../flight/conditions.ts";
import { DEGREE, RPM } from "../../flight/constants.ts";
import { type Disagreement, disagreements } from "../../flight/cross-checks.ts";
import { type Derived, deliveryFrom, derivedMetrics } from "../../flight/derived-metrics.ts";
import type { Estimate } from "../../flight/estimate.ts";
import { estimatedFlight, type FlightMetric } from "../../flight/estimated-flight.ts";
import type { Launch } from "../../flight/launch.ts";
import { launchEfficiency } from "../../flight/launch-efficiency.ts";
import { LAUNCH, launchFrom, measured, type Readings } from "../../flight/measured-launch.ts";
import type { Moment } from "../../flight/moment.ts";
import { pathOf } from "../../flight/path.ts";
import { standardCarry } from "../../flight/standard-carry.ts";
import { REFERENCE, STILL, type Surroundings } from "../../flight/surroundings.ts";
import { type Change, type Effect, USUAL_CHANGES, whatIfClub, whatIfLaunch } from "../../flight/what-if.ts";
import type { StatedAir } from "./conditions.ts";
import type { StatedLaunch } from "./launches.ts";

export interface LaunchEstimates {
  readonly stated: StatedLaunch;
  /** In the air that was stated. */
  readonly flight: Readonly<Record<FlightMetric, Estimate>>;
  /** In reference air. */
  readonly reference: Readonly<Record<FlightMetric, Estimate>>;
  /** Null where no carry, and where no attack angle, was stated. */
  readonly standardCarry: Estimate | null;
  readonly launchEfficiency: Estimate | null;
  /** The launch within reach of the attack angle that carries farthest in reference air. */
  readonly best: { readonly launchAngle: number; readonly spinRate: number; readonly carry: number } | null;
  /** What a strike of these club angles would do, as far as it was not stated. */
  readonly strike: readonly Derived[];
  readonly disagreements: readonly Disagreement[];
}

export function estimatesOf(stated: StatedLaunch, { conditions, windExponent }: StatedAir): LaunchEstimates {
  const { values } = stated;
  const readings: Readings = { values, derived: [] };
  const { "ball-speed": ballSpeed, "attack-angle": attack } = values;
  const best =
    ballSpeed === undefined || attack === undefined
      ? undefined
      : bestReachable(ballSpeed, attack, "ss94_flat");
  return {
    stated,
    flight: estimatedFlight(readings, conditions, windExponent),
    reference: estimatedFlight(readings, REFERENCE_CONDITIONS),
    standardCarry: "carry" in values ? standardCarry(readings, conditions, windExponent) : null,
    launchEfficiency: attack === undefined ? null : launchEfficiency(readings),
    best:
      best === undefined
        ? null
        : { launchAngle: best.launch.launchAngle, spinRate: best.launch.spinRate, carry: best.carry },
    strike: derivedMetrics(values).filter(({ metric }) => metric !== "curve" && metric !== "offline"),
    disagreements: disagreements(readings, conditions),
  };
}

/** Reference air, as conditions. */
const REFERENCE_CONDITIONS: StatedAir["conditions"] = {
  temperature: 288.15,
  pressure: 101_325,
  altitude: null,
  humidity: 0,
  wind: STILL,
  ball: { name: "new", carryFactor: 1 },
};

/** The surroundings of an air that can be believed. */
export function surroundingsOf({ conditions, windExponent }: StatedAir): Surroundings {
  const place = placeOf(conditions, windExponent);
  return typeof place === "string" ? REFERENCE : place.surroundings;
}

/** The launch, and its way through the air, where the model has one. */
export function pathThrough(stated: StatedLaunch, air: StatedAir): readonly Moment[] {
  const launch = launchIn(stated);
  return launch === null ? [] : pathOf(launch, surroundingsOf(air), COEFFICIENTS.ss94_flat);
}

/** What the ball speed of a launch could do in reference air. */
export interface Bounds {
  /** The launches within reach of the attack angle that carry 99 % of the farthest; null without an attack angle. */
  readonly window: LaunchWindow | null;
  /** The farthest of all, launch angle and spin both free. */
  readonly free: BestLaunch;
}

/** Searched, which takes a hundred flights and more: for one launch. Null where there is nothing to search. */
export function boundsOf({ values }: StatedLaunch): Bounds | null {
  const { "ball-speed": ballSpeed, "attack-angle": attack } = values;
  if (ballSpeed === undefined || bestReachable(ballSpeed, attack ?? 0, "ss94_flat") === undefined)
    return null;
  const set = COEFFICIENTS.ss94_flat;
  return {
    window: attack === undefined ? null : launchWindow({ ballSpeed }, attack, set),
    free: bestFreeLaunch(ballSpeed, set),
  };
}

export interface Worth {
  readonly change: Change;
  readonly effect: Effect;
}

/** What a degree is worth at the club, where its angles are known, and what a little more launch and spin are. */
export function worthOf(stated: StatedLaunch, air: StatedAir): readonly Worth[] {
  const launch = launchIn(stated);
  if (launch === null) return [];
  const delivery = deliveryFrom(stated.values);
  const surroundings = surroundingsOf(air);
  return [
    ...(delivery === undefined
      ? []
      : USUAL_CHANGES.map((change) => ({
          change,
          effect: whatIfClub(launch, delivery, change, surroundings),
        }))),
    ...LAUNCH_CHANGES.map((change) => ({ change, effect: whatIfLaunch(launch, change, surroundings) })),
  ];
}

const LAUNCH_CHANGES = [
  { metric: "launch-angle", by: DEGREE },
  { metric: "spin-rate", by: 300 * RPM },
  { metric: "spin-axis", by: DEGREE },
] as const;

function launchIn({ values }: StatedLaunch): Launch | null {
  const launch = measured({ values, derived: [] }, LAUNCH);
  return typeof launch === "string" || launch["launch-angle"] <= 0 ? null : launchFrom(launch);
}
