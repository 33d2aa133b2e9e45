/** Balls for tests that look into a flight: made-up coefficients, started with any velocity and axis. */
import type { Coefficients } from "../../server/flight/coefficients.ts";
import { BALL_RADIUS, DEGREE, GRAVITY, RPM } from "../../server/flight/constants.ts";
import type { Launch } from "../../server/flight/launch.ts";
import { type Moment, newMoment } from "../../server/flight/moment.ts";
import { motionOf } from "../../server/flight/motion.ts";
import { REFERENCE, type Surroundings } from "../../server/flight/surroundings.ts";
import { Trajectory } from "../../server/flight/trajectory.ts";
import type { Vector } from "../../server/flight/vector.ts";

/** Air of 1.225 kg/m³. */
export const PLAIN_AIR: Surroundings = { ...REFERENCE, air: { density: 1.225, viscosity: 1.8e-5 } };
export const WITHOUT_GRAVITY: Surroundings = { ...PLAIN_AIR, gravity: 0 };
export const VACUUM: Surroundings = { ...REFERENCE, air: { density: 0, viscosity: 1.8e-5 } };

/** So much spin that the lift is at its ceiling however fast the ball flies. */
export const TOP_SPIN_RATE = (100 * 0.4) / BALL_RADIUS;

/** Constant coefficients, for a ball of `TOP_SPIN_RATE` that is slower than 100 m/s. */
export function constant(drag: number, lift: number): Coefficients {
  return { drag, dragBySpin: 0, dragByReynolds: 0, lift: lift / 0.35 ** 0.4 };
}

export interface Ball {
  readonly velocity: Vector;
  readonly axis: Vector;
  /** rad/s. */
  readonly spin: number;
}

/** Every flight here needs no more than this. */
const TIGHT = 1e-10;

/** Where a ball is after so many seconds. */
export function after(
  seconds: number,
  { velocity, axis, spin }: Ball,
  surroundings: Surroundings,
  coefficients: Coefficients,
): Moment {
  const [vx, vy, vz] = velocity;
  const start = { ...newMoment(), vx, vy, vz, spin };
  const trajectory = new Trajectory(motionOf(axis, surroundings, coefficients), start, TIGHT);
  do trajectory.advance();
  while (trajectory.to.time < seconds);
  const { from, to } = trajectory;
  return trajectory.at((seconds - from.time) / (to.time - from.time));
}

export function launch(
  ballSpeed: number,
  launchDegrees: number,
  startDegrees = 0,
  spinRpm = 0,
  tiltDegrees = 0,
): Launch {
  return {
    ballSpeed,
    launchAngle: launchDegrees * DEGREE,
    startDirection: startDegrees * DEGREE,
    spinRate: spinRpm * RPM,
    spinAxis: tiltDegrees * DEGREE,
  };
}

export { DEGREE, GRAVITY, RPM };
