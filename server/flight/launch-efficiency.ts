/** How much of the carry within reach a launch used. */
import { bestReachable } from "./best-carry.ts";
import { type Estimate, estimated, notMeasured, RATIO_STEP } from "./estimate.ts";
import { launchFrom, measured, type Readings } from "./measured-launch.ts";
import { referenceCarry } from "./reference-carry.ts";
import { REFERENCE } from "./surroundings.ts";
import { validityOf, worse } from "./validity.ts";

/**
 * The modelled carry of the measured launch, as a share (1 for all of it) of the best carry that this ball speed and this attack angle
 * could have, both in reference air. The best leaves one freedom, the loft at contact (best-launch.ts). A ball that spins less than a
 * rigid ball would can come out a little above 1. It says nothing of what the shot was for: irons are not made to go farthest.
 */
export function launchEfficiency(readings: Readings): Estimate {
  const shot = measured(readings, ["ball-speed", "launch-angle", "spin-rate", "spin-axis", "attack-angle"]);
  if (typeof shot === "string") return notMeasured(shot);
  const launch = launchFrom(shot);
  const own = validityOf(launch, REFERENCE);
  if (own.status === "unsupported") return estimated(0, 0, 1, own, []);
  const best = bestReachable(launch.ballSpeed, shot["attack-angle"], "ss94_flat");
  if (best === undefined) {
    return notMeasured(
      "Best launches are known for ball speeds from 24 to 96 m/s and attack angles from 12.5° down to 10° up, and this shot is outside.",
    );
  }
  const carry = referenceCarry(launch);
  const other = bestReachable(launch.ballSpeed, shot["attack-angle"], "ss94") ?? best;
  const value = carry.ss94_flat / best.carry;
  const validity = worse(own, validityOf(best.launch, REFERENCE));
  return estimated(value, value - carry.ss94 / other.carry, RATIO_STEP, validity, []);
}
