/** The way through the air, for pictures. */
import type { Coefficients } from "./coefficients.ts";
import { isLanding, landingShare, trajectoryOf } from "./fly.ts";
import type { Launch } from "./launch.ts";
import type { Moment } from "./moment.ts";
import type { Surroundings } from "./surroundings.ts";
import { TOLERANCE } from "./trajectory.ts";

/**
 * The moments of a flight every so many seconds from the launch on, and the landing as the last.
 * @throws RangeError where the ball does not start upwards.
 */
export function pathOf(
  launch: Launch,
  surroundings: Surroundings,
  coefficients: Coefficients,
  every = 0.05,
  tolerance = TOLERANCE,
): Moment[] {
  const trajectory = trajectoryOf(launch, surroundings, coefficients, tolerance);
  const moments = [{ ...trajectory.to }];
  for (let isDown = false; !isDown; ) {
    trajectory.advance();
    isDown = isLanding(trajectory);
    const start = trajectory.from.time;
    const length = trajectory.to.time - start;
    const last = isDown ? landingShare(trajectory) : 1;
    for (let share = 0; share < last; ) {
      share = (moments.length * every - start) / length;
      if (share < last) moments.push(trajectory.at(share));
    }
    if (isDown) moments.push(trajectory.at(last));
  }
  return moments;
}
