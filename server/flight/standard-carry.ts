/** The carry in reference air. */
import type { Conditions } from "../../shared/plan-model.ts";
import { COEFFICIENTS, type Coefficients } from "./coefficients.ts";
import { type Place, placeOf } from "./conditions.ts";
import { type Estimate, estimated, LENGTH_STEP, notMeasured } from "./estimate.ts";
import { fly } from "./fly.ts";
import type { Launch } from "./launch.ts";
import { launchFrom, measured, type Readings } from "./measured-launch.ts";
import { REFERENCE, type Surroundings } from "./surroundings.ts";
import { validityOf, worse } from "./validity.ts";

/**
 * The carry (m) that a new ball would have had in reference air (15 °C, 101 325 Pa, dry, still):
 *
 *     measured / ball factor + (model in reference air − model in the session's air)
 *
 * An error of the model's level cancels to first order, so that the correction is known to about a quarter of itself though
 * the level is not. Not measured where a reading or a condition is missing, or the launch is beyond the model.
 */
export function standardCarry(readings: Readings, conditions: Conditions, windExponent = 0): Estimate {
  const shot = measured(readings, [
    "carry",
    "ball-speed",
    "launch-angle",
    "start-direction",
    "spin-rate",
    "spin-axis",
  ]);
  if (typeof shot === "string") return notMeasured(shot);
  const place = placeOf(conditions, windExponent);
  if (typeof place === "string") return notMeasured(place);
  const launch = launchFrom(shot);
  const validity = worse(validityOf(launch, place.surroundings), validityOf(launch, REFERENCE));
  if (validity.status === "unsupported") return estimated(0, 0, 1, validity, []);
  const corrections = Object.values(COEFFICIENTS).map((set) => correction(launch, place.surroundings, set));
  const [value = 0, other = 0] = corrections;
  const uncertainty = Math.abs(value - other) + openHumidity(launch, place);
  return estimated(
    shot.carry / place.carryFactor + value,
    uncertainty,
    LENGTH_STEP,
    validity,
    place.assumptions,
  );
}

/** What the air of reference gives more than this one, m, by one coefficient set. */
export function correction(
  launch: Launch,
  surroundings: Surroundings,
  coefficients: Coefficients,
  reference = REFERENCE,
): number {
  return fly(launch, reference, coefficients).carry - fly(launch, surroundings, coefficients).carry;
}

/** Half of what an unstated humidity could change. */
function openHumidity(launch: Launch, { extremes }: Place): number {
  const [dry = 0, damp = 0] = extremes.map((air) => fly(launch, air, COEFFICIENTS.ss94_flat).carry);
  return Math.abs(damp - dry) / 2;
}
