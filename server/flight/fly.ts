/** From a launch to where and how the ball lands. */
import type { Coefficients } from "./coefficients.ts";
import { axisOf, type Launch, startOf } from "./launch.ts";
import { motionOf } from "./motion.ts";
import { rootBetween } from "./root.ts";
import type { Surroundings } from "./surroundings.ts";
import { TOLERANCE, Trajectory } from "./trajectory.ts";

/** SI and radians. The flight ends where the ball comes back to the height it was hit from. */
export interface Flight {
  /** Straight over the ground from the ball to where it lands. */
  readonly carry: number;
  /** Along the target line. */
  readonly downrange: number;
  /** From the target line, to the right positive. */
  readonly offline: number;
  /** From the line on which the ball started, to the right positive. */
  readonly curve: number;
  /** Greatest height. */
  readonly apex: number;
  readonly flightTime: number;
  /** Below the horizontal. */
  readonly descentAngle: number;
  /** Over the ground. */
  readonly landingSpeed: number;
  /** rad/s. */
  readonly landingSpin: number;
}

/**
 * The flight of a launch, by the equations of motion.ts. Landing points are within 0.1 mm of the exact solution of these
 * equations at the usual tolerance; how well the equations describe a ball is another matter, see validity.ts.
 *
 * Uses functions of the engine (sin, cos) whose last bit may differ from engine to engine, and a flight makes some 1e-12 m of
 * that. Round what enters a verdict with `settled`.
 * @throws RangeError where the ball does not start upwards, or a number is not finite.
 */
export function fly(
  launch: Launch,
  surroundings: Surroundings,
  coefficients: Coefficients,
  tolerance = TOLERANCE,
): Flight {
  const trajectory = trajectoryOf(launch, surroundings, coefficients, tolerance);
  let apex = 0;
  do {
    trajectory.advance();
    apex = Math.max(apex, highest(trajectory));
  } while (!isLanding(trajectory));
  const { time, x, z, vx, vy, vz, spin } = trajectory.at(landingShare(trajectory));
  const over = Math.sqrt(vx * vx + vz * vz);
  const { startDirection } = launch;
  return {
    carry: Math.sqrt(x * x + z * z),
    downrange: x,
    offline: z,
    curve: z * Math.cos(startDirection) - x * Math.sin(startDirection),
    apex,
    flightTime: time,
    descentAngle: Math.atan2(-vy, over),
    landingSpeed: Math.sqrt(over * over + vy * vy),
    landingSpin: spin,
  };
}

/** @throws RangeError */
export function trajectoryOf(
  launch: Launch,
  surroundings: Surroundings,
  coefficients: Coefficients,
  tolerance = TOLERANCE,
): Trajectory {
  const start = startOf(launch);
  if (!(start.vy > 0 && Number.isFinite(launch.ballSpeed) && Number.isFinite(launch.spinRate))) {
    throw new RangeError("Only a ball that starts upwards flies.");
  }
  return new Trajectory(motionOf(axisOf(launch), surroundings, coefficients), start, tolerance);
}

/** Whether the ball comes back to the height it was hit from in the present step. */
export function isLanding({ to }: Trajectory): boolean {
  return to.y <= 0 && to.vy < 0;
}

/** The share of the present step at which it does. */
export function landingShare(trajectory: Trajectory): number {
  const { from, to } = trajectory;
  // Behind the top of the step, if it has one, the ball only falls.
  const low = from.vy > 0 ? topShare(trajectory) : 0;
  const atLow = trajectory.heightAt(low);
  return atLow > 0 ? rootBetween((share) => trajectory.heightAt(share), low, 1, atLow, to.y, 1e-9) : low;
}

/** The greatest height in the present step that is no end of it; 0 where there is none. */
function highest(trajectory: Trajectory): number {
  const { from, to } = trajectory;
  return from.vy > 0 && to.vy <= 0 ? trajectory.heightAt(topShare(trajectory)) : 0;
}

function topShare(trajectory: Trajectory): number {
  const { from, to } = trajectory;
  return rootBetween((share) => trajectory.climbAt(share), 0, 1, from.vy, to.vy, 1e-9);
}
