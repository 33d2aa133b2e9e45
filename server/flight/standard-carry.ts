/** The carry in reference air. */
import type { Conditions } from "../../shared/plan-model.ts";
import { COEFFICIENTS, type CoefficientSet } from "./coefficients.ts";
import { placeOf } from "./conditions.ts";
import { type Estimate, estimated, LENGTH_STEP, notMeasured } from "./estimate.ts";
import { fly } from "./fly.ts";
import { LAUNCH, launchFrom, measured, type Readings } from "./measured-launch.ts";
import { referenceCarry, TOLERANCES } from "./reference-carry.ts";
import { REFERENCE } from "./surroundings.ts";
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
  const shot = measured(readings, ["carry", ...LAUNCH]);
  if (typeof shot === "string") return notMeasured(shot);
  const place = placeOf(conditions, windExponent);
  if (typeof place === "string") return notMeasured(place);
  const launch = launchFrom(shot);
  const validity = worse(validityOf(launch, place.surroundings), validityOf(launch, REFERENCE));
  if (validity.status === "unsupported") return estimated(0, 0, 1, validity, []);
  const reference = referenceCarry(launch);
  const here = (set: CoefficientSet, surroundings = place.surroundings) =>
    fly(launch, surroundings, COEFFICIENTS[set], TOLERANCES[set]).carry;
  const value = reference.ss94_flat - here("ss94_flat");
  const other = reference.ss94 - here("ss94");
  // Half of what an unstated humidity could change.
  const [dry = 0, damp = 0] = place.extremes.map((air) => here("ss94", air));
  return estimated(
    shot.carry / place.carryFactor + value,
    Math.abs(value - other) + Math.abs(damp - dry) / 2,
    LENGTH_STEP,
    validity,
    place.assumptions,
  );
}
