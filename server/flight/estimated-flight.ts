/** Metrics of a flight as the model has it. SI, target frame. */
import type { Conditions } from "../../shared/plan-model.ts";
import { COEFFICIENTS } from "./coefficients.ts";
import { placeOf } from "./conditions.ts";
import { type Estimate, estimated, LENGTH_STEP, notMeasured, RATIO_STEP } from "./estimate.ts";
import { fly } from "./fly.ts";
import { LAUNCH, launchFrom, measured, type Readings } from "./measured-launch.ts";
import { validityOf } from "./validity.ts";

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
