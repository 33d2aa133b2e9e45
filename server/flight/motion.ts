/** What the motion of a ball depends on, with all that stays the same during a flight worked out once. */
import { type Coefficients, liftSlope, reynoldsTerm } from "./coefficients.ts";
import {
  BALL_AREA,
  BALL_DIAMETER,
  BALL_MASS,
  BALL_RADIUS,
  SPIN_DECAY,
  SPIN_DECAY_DENSITY,
} from "./constants.ts";
import type { Moment } from "./moment.ts";
import type { Surroundings } from "./surroundings.ts";
import type { Vector } from "./vector.ts";

export interface Motion {
  /** The axis the ball spins about, a unit vector, by the right-hand rule. It keeps its direction. */
  readonly axisX: number;
  readonly axisY: number;
  readonly axisZ: number;
  /** The air's motion 10 m above the ground, and how it grows with height. */
  readonly windX: number;
  readonly windZ: number;
  readonly windExponent: number;
  readonly gravity: number;
  /** Deceleration for each (m/s)² of airspeed: without spin, for each unit of spin ratio, and by the Reynolds term. */
  readonly drag: number;
  readonly dragBySpin: number;
  readonly dragByReynolds: number;
  /** Lift acceleration for each rad/s, m/s and unit of `liftSlope`. */
  readonly lift: number;
  readonly reynoldsPerSpeed: number;
  /** Share of the spin that is lost for each metre through the air. */
  readonly spinLoss: number;
}

export function motionOf(
  axis: Vector,
  { air, wind, ball, gravity }: Surroundings,
  coefficients: Coefficients,
): Motion {
  const force = (air.density * BALL_AREA) / (2 * BALL_MASS);
  return {
    axisX: axis[0],
    axisY: axis[1],
    axisZ: axis[2],
    windX: wind.along,
    windZ: wind.across,
    windExponent: wind.exponent,
    gravity,
    drag: force * ball.drag * coefficients.drag,
    dragBySpin: force * ball.drag * coefficients.dragBySpin,
    dragByReynolds: force * ball.drag * coefficients.dragByReynolds,
    lift: force * ball.lift * coefficients.lift * BALL_RADIUS,
    reynoldsPerSpeed: (air.density * BALL_DIAMETER) / air.viscosity,
    spinLoss: (SPIN_DECAY * air.density) / SPIN_DECAY_DENSITY / BALL_RADIUS,
  };
}

/** The wind at a height, as a share of that at 10 m: a power of the height, steady below 1 m. */
export function windShare(height: number, exponent: number): number {
  return exponent === 0 ? 1 : (Math.max(height, 1) / 10) ** exponent;
}

/**
 * Works out the rest of a moment from its place, velocity and spin:
 *
 *     dv/dt = (ρ A U² / 2m) [ −C_D ê + C_L (q/|q|) × ê ] − g ŷ,   dω/dt = −λ (ρ/ρ₀) ω U / r
 *
 * where u = v − wind, U = |u|, ê = u/U and q is the part of the axis ŵ across ê. Since (q × ê) = ŵ × ê, and the spin ratio
 * S = r ω |ŵ × u| / U², the lift is (ρ A / 2m) r ω (C_L / S) ŵ × u. `step.ts` says the same in the variables of its loop.
 */
export function complete(moment: Moment, motion: Motion): void {
  throughAir(moment, motion);
  const { airspeed, spinRatio, spin } = moment;
  const { axisX, axisY, axisZ } = motion;
  const share = windShare(moment.y, motion.windExponent);
  const ux = moment.vx - motion.windX * share;
  const uy = moment.vy;
  const uz = moment.vz - motion.windZ * share;
  let drag = motion.drag + motion.dragBySpin * spinRatio;
  if (motion.dragByReynolds !== 0)
    drag += motion.dragByReynolds * reynoldsTerm(motion.reynoldsPerSpeed * airspeed);
  drag *= airspeed;
  const lift = motion.lift * spin * liftSlope(spinRatio);
  moment.ax = lift * (axisY * uz - axisZ * uy) - drag * ux;
  moment.ay = lift * (axisZ * ux - axisX * uz) - drag * uy - motion.gravity;
  moment.az = lift * (axisX * uy - axisY * ux) - drag * uz;
  moment.spinSlope = -motion.spinLoss * spin * airspeed;
}

/** Works out the speed through the air and the spin ratio alone. */
export function throughAir(moment: Moment, motion: Motion): void {
  const share = windShare(moment.y, motion.windExponent);
  const ux = moment.vx - motion.windX * share;
  const uy = moment.vy;
  const uz = moment.vz - motion.windZ * share;
  const { axisX, axisY, axisZ } = motion;
  const cx = axisY * uz - axisZ * uy;
  const cy = axisZ * ux - axisX * uz;
  const cz = axisX * uy - axisY * ux;
  const squared = ux * ux + uy * uy + uz * uz;
  const surface = BALL_RADIUS * moment.spin * Math.sqrt(cx * cx + cy * cy + cz * cz);
  moment.airspeed = Math.sqrt(squared);
  moment.spinRatio = squared > 0 ? surface / squared : 0;
}
