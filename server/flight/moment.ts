/** A ball in the air at one moment. SI; x towards the target, y up, z to the right. */
export interface Moment {
  /** Seconds since the launch. */
  time: number;
  x: number;
  y: number;
  z: number;
  vx: number;
  vy: number;
  vz: number;
  /** rad/s. */
  spin: number;
  /** Acceleration. */
  ax: number;
  ay: number;
  az: number;
  /** rad/s². */
  spinSlope: number;
  /** Speed through the air. */
  airspeed: number;
  /** Speed of the surface by the spin across the motion through the air, over the speed through the air. */
  spinRatio: number;
}

export function newMoment(): Moment {
  return {
    time: 0,
    x: 0,
    y: 0,
    z: 0,
    vx: 0,
    vy: 0,
    vz: 0,
    spin: 0,
    ax: 0,
    ay: 0,
    az: 0,
    spinSlope: 0,
    airspeed: 0,
    spinRatio: 0,
  };
}
