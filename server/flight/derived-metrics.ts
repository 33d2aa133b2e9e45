/**
 * Metrics of a shot that follow from its others by geometry or by a model, where the data lacks them. SI, target frame.
 * Formulas of plain arithmetic are no part of this: the vocabulary states them.
 */
import type { Conditions } from "../../shared/plan-model.ts";
import { COEFFICIENTS } from "./coefficients.ts";
import { placeOf } from "./conditions.ts";
import { type Estimate, estimated, LENGTH_STEP, notMeasured, RATIO_STEP } from "./estimate.ts";
import { fly } from "./fly.ts";
import { type ClubDelivery, strikeOf } from "./impact.ts";
import { LAUNCH, launchFrom, measured, type Readings } from "./measured-launch.ts";
import { validityOf } from "./validity.ts";

export type Values = Readonly<Record<string, number>>;

export interface Derived {
  readonly metric: string;
  readonly value: number;
  /** Exact geometry; or the model of a strike through the middle of the face, an estimate. */
  readonly by: "geometry" | "strike";
}

/** What follows from the readings without the air: spin loft, curve, offline, launch angle, start direction and spin axis. */
export function derivedMetrics(values: Values): Derived[] {
  const delivery = deliveryFrom(values);
  const strike = delivery && strikeOf(delivery);
  const derived: readonly [metric: string, value: number | undefined, by: Derived["by"]][] = [
    ["spin-loft", strike?.spinLoft, "geometry"],
    ["curve", curveFrom(values), "geometry"],
    ["offline", offlineFrom(values), "geometry"],
    ["launch-angle", strike?.launchAngle, "strike"],
    ["start-direction", strike?.startDirection, "strike"],
    ["spin-axis", strike?.spinAxis, "strike"],
  ];
  return derived.flatMap(([metric, value, by]) =>
    value === undefined || Object.hasOwn(values, metric) ? [] : [{ metric, value, by }],
  );
}

/** What the club did, where all four of its angles are known. */
export function deliveryFrom(values: Values): ClubDelivery | undefined {
  const {
    "dynamic-loft": dynamicLoft,
    "face-angle": faceAngle,
    "attack-angle": attackAngle,
    "club-path": clubPath,
  } = values;
  if (dynamicLoft === undefined || faceAngle === undefined) return undefined;
  if (attackAngle === undefined || clubPath === undefined) return undefined;
  return { dynamicLoft, faceAngle, attackAngle, clubPath };
}

/** How far from the line on which it started a ball lands. */
export function curveFrom({ carry, offline, "start-direction": start }: Values): number | undefined {
  if (carry === undefined || offline === undefined || start === undefined) return undefined;
  if (Math.abs(offline) > carry) return undefined;
  const downrange = Math.sqrt(carry * carry - offline * offline);
  return offline * Math.cos(start) - downrange * Math.sin(start);
}

function offlineFrom({ carry, curve, "start-direction": start }: Values): number | undefined {
  if (carry === undefined || curve === undefined || start === undefined) return undefined;
  if (Math.abs(curve) > carry) return undefined;
  const along = Math.sqrt(carry * carry - curve * curve);
  return curve * Math.cos(start) + along * Math.sin(start);
}

/** What is known of a flight, as metrics are named, and to which step it is rounded. */
const FLIGHT_METRICS = {
  carry: ["carry", LENGTH_STEP],
  offline: ["offline", LENGTH_STEP],
  curve: ["curve", LENGTH_STEP],
  apex: ["apex", LENGTH_STEP],
  "descent-angle": ["descentAngle", RATIO_STEP],
  "flight-time": ["flightTime", RATIO_STEP],
  "landing-speed": ["landingSpeed", LENGTH_STEP],
  "landing-spin": ["landingSpin", LENGTH_STEP],
} as const;

export type FlightMetric = keyof typeof FLIGHT_METRICS;

/** What the flight model makes of a measured launch in the session's air, each with its own uncertainty. */
export function estimatedFlight(
  readings: Readings,
  conditions: Conditions,
  windExponent = 0,
): Readonly<Record<FlightMetric, Estimate>> {
  const shot = measured(readings, LAUNCH);
  const place = placeOf(conditions, windExponent);
  const obstacle = [shot, place].find((part) => typeof part === "string");
  if (typeof shot === "string" || typeof place === "string") {
    return each(() => notMeasured(obstacle as string));
  }
  const launch = launchFrom(shot);
  const validity = validityOf(launch, place.surroundings);
  if (validity.status === "unsupported") return each(() => estimated(0, 0, 1, validity, []));
  const flat = fly(launch, place.surroundings, COEFFICIENTS.ss94_flat);
  const other = fly(launch, place.surroundings, COEFFICIENTS.ss94);
  return each((metric) => {
    const [name, step] = FLIGHT_METRICS[metric];
    return estimated(flat[name], flat[name] - other[name], step, validity, place.assumptions);
  });
}

function each(estimate: (metric: FlightMetric) => Estimate): Record<FlightMetric, Estimate> {
  const metrics = Object.keys(FLIGHT_METRICS) as FlightMetric[];
  return Object.fromEntries(metrics.map((metric) => [metric, estimate(metric)])) as Record<
    FlightMetric,
    Estimate
  >;
}
