/** How a ball leaves the club. */
import { type Moment, newMoment } from "./moment.ts";
import { combine, type Vector } from "./vector.ts";

export interface Launch {
  /** m/s. */
  readonly ballSpeed: number;
  /** Radians above the horizontal. */
  readonly launchAngle: number;
  /** Radians to the right of the target line. */
  readonly startDirection: number;
  /** rad/s. */
  readonly spinRate: number;
  /** Radians by which the right end of the axis is lower: a positive tilt bends the ball right. 0 is pure backspin. */
  readonly spinAxis: number;
}

/** Unit vectors of a direction: along it, horizontally to its right, and across both, upwards. */
export interface Frame {
  readonly along: Vector;
  readonly right: Vector;
  readonly up: Vector;
}

export function frameOf(launchAngle: number, startDirection: number): Frame {
  const sinA = Math.sin(launchAngle);
  const cosA = Math.cos(launchAngle);
  const sinB = Math.sin(startDirection);
  const cosB = Math.cos(startDirection);
  return {
    along: [cosA * cosB, sinA, cosA * sinB],
    right: [-sinB, 0, cosB],
    up: [-sinA * cosB, cosA, -sinA * sinB],
  };
}

/** The axis the ball spins about, a unit vector by the right-hand rule. */
export function axisOf({ launchAngle, startDirection, spinAxis }: Launch): Vector {
  const { right, up } = frameOf(launchAngle, startDirection);
  return combine(Math.cos(spinAxis), right, -Math.sin(spinAxis), up);
}

/** The moment of the launch, at the origin. */
export function startOf({ ballSpeed, launchAngle, startDirection, spinRate }: Launch): Moment {
  const { along } = frameOf(launchAngle, startDirection);
  const start = newMoment();
  start.vx = ballSpeed * along[0];
  start.vy = ballSpeed * along[1];
  start.vz = ballSpeed * along[2];
  start.spin = spinRate;
  return start;
}
