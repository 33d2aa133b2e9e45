/** A flight, one step after another, each as long as the wanted accuracy allows. */
import { LIFT_CEILING, REYNOLDS_HIGH, REYNOLDS_LOW } from "./coefficients.ts";
import { type Moment, newMoment } from "./moment.ts";
import { complete, type Motion, throughAir } from "./motion.ts";
import { rootBetween } from "./root.ts";
import { type Bow, step } from "./step.ts";

/** Estimated error of a step, m and m/s, that keeps landing points within 0.1 mm. */
export const TOLERANCE = 3e-6;
/** Near the ground a wind that grows with height bends a path more sharply than a step's own estimate sees. */
const TOLERANCE_SHARE_IN_GROWING_WIND = 1 / 3;

const FIRST_STEP = 0.15;
const MOST_TRIES = 100_000;

export class Trajectory {
  /** The ends of the present step. */
  from = newMoment();
  to: Moment;
  readonly #probe = newMoment();
  readonly #bow: Bow = { x: 0, y: 0, z: 0, vx: 0, vy: 0, vz: 0, spin: 0 };
  readonly #motion: Motion;
  readonly #tolerance: number;
  #length = FIRST_STEP;
  #tries = 0;

  /** Begins at a place with a velocity and a spin; nothing else of `start` is looked at. */
  constructor(motion: Motion, start: Moment, tolerance = TOLERANCE) {
    complete(start, motion);
    this.to = start;
    this.#motion = motion;
    this.#tolerance = tolerance * (motion.windExponent === 0 ? 1 : TOLERANCE_SHARE_IN_GROWING_WIND);
  }

  /**
   * Moves on by a step. A step ends where a law of the forces changes, so that the method sees only smooth ones.
   * @throws Error where no end is in sight, which would be a mistake of ours.
   */
  advance(): void {
    [this.from, this.to] = [this.to, this.from];
    for (let error = Number.POSITIVE_INFINITY; !(error <= 1); ) {
      if (++this.#tries > MOST_TRIES) throw new Error("A flight does not come to its end.");
      const length = this.#length;
      error = this.#step(length);
      const share = this.#firstBend();
      if (share < 1) error = this.#step(length * share);
      this.#length = share < 1 && error <= 1 ? length : length * share * growth(error);
    }
  }

  /** The moment at a share (0 to 1) of the present step, on the curve of fourth order through it. */
  at(share: number): Moment {
    const moment = newMoment();
    this.#place(moment, share);
    complete(moment, this.#motion);
    return moment;
  }

  #place(moment: Moment, share: number): void {
    const { from, to } = this;
    const bow = this.#bow;
    const h = to.time - from.time;
    moment.time = from.time + share * h;
    moment.x = between(from.x, to.x, h * from.vx, h * to.vx, h * bow.x, share);
    moment.y = between(from.y, to.y, h * from.vy, h * to.vy, h * bow.y, share);
    moment.z = between(from.z, to.z, h * from.vz, h * to.vz, h * bow.z, share);
    moment.vx = between(from.vx, to.vx, h * from.ax, h * to.ax, h * bow.vx, share);
    moment.vy = between(from.vy, to.vy, h * from.ay, h * to.ay, h * bow.vy, share);
    moment.vz = between(from.vz, to.vz, h * from.az, h * to.az, h * bow.vz, share);
    moment.spin = between(from.spin, to.spin, h * from.spinSlope, h * to.spinSlope, h * bow.spin, share);
  }

  /** Its height alone. */
  heightAt(share: number): number {
    const { from, to } = this;
    const h = to.time - from.time;
    return between(from.y, to.y, h * from.vy, h * to.vy, h * this.#bow.y, share);
  }

  /** The speed at which it rises alone. */
  climbAt(share: number): number {
    const { from, to } = this;
    const h = to.time - from.time;
    return between(from.vy, to.vy, h * from.ay, h * to.ay, h * this.#bow.vy, share);
  }

  #step(length: number): number {
    return step(this.#motion, this.from, length, this.to, this.#bow) / this.#tolerance;
  }

  /**
   * The share of the present step after which a law of the forces changes, where they are continuous and bend; 1 where none does:
   * the lift at its ceiling, the drag at the ends of its Reynolds numbers, the wind at the height below which it is steady.
   */
  #firstBend(): number {
    const { from, to } = this;
    const { dragByReynolds, reynoldsPerSpeed, windExponent } = this.#motion;
    let first = this.#shareBefore("spinRatio", LIFT_CEILING, from.spinRatio, to.spinRatio);
    if (dragByReynolds !== 0) {
      const slow = REYNOLDS_LOW / reynoldsPerSpeed;
      const fast = REYNOLDS_HIGH / reynoldsPerSpeed;
      first = Math.min(first, this.#shareBefore("airspeed", slow, from.airspeed, to.airspeed));
      first = Math.min(first, this.#shareBefore("airspeed", fast, from.airspeed, to.airspeed));
    }
    return windExponent === 0 ? first : Math.min(first, this.#shareBefore("y", 1, from.y, to.y));
  }

  #shareBefore(of: Bent, at: number, start: number, end: number): number {
    const before = offBend(start / at - 1);
    const after = offBend(end / at - 1);
    if (Math.abs(before) > NEAR_BEND) {
      return before * after < 0 ? this.#crossing(of, at, 0, 1, before, after) : 1;
    }
    // What begins close to a bend may cross it and come back.
    const middle = this.#distance(of, at, 0.5);
    if (before * middle < 0) return this.#crossing(of, at, 0, 0.5, before, middle);
    return middle * after < 0 ? this.#crossing(of, at, 0.5, 1, middle, after) : 1;
  }

  #crossing(of: Bent, at: number, low: number, high: number, atLow: number, atHigh: number): number {
    const distance = (share: number) => this.#distance(of, at, share);
    return rootBetween(distance, low, high, atLow, atHigh, ON_BEND / 10);
  }

  #distance(of: Bent, at: number, share: number): number {
    this.#place(this.#probe, share);
    throughAir(this.#probe, this.#motion);
    return this.#probe[of] / at - 1;
  }
}

type Bent = "spinRatio" | "airspeed" | "y";

/** What is as close to a bend as this begins or ends on it, and lies on one side of it. A share of the value there. */
const ON_BEND = 1e-4;
/** What begins as close as this may cross it and come back within a step. */
const NEAR_BEND = 0.05;

function offBend(distance: number): number {
  return Math.abs(distance) < ON_BEND ? 0 : distance;
}

/** How much longer the next step may be after this error: its power −3/16, within limits. */
function growth(error: number): number {
  const eighth = Math.sqrt(Math.sqrt(Math.sqrt(error)));
  return Math.min(5, Math.max(0.2, 0.85 / (eighth * Math.sqrt(eighth))));
}

/** A curve of fourth order between two values, by the rises that the slopes at its ends would make, and its bow. */
function between(
  start: number,
  end: number,
  startRise: number,
  endRise: number,
  bow: number,
  share: number,
): number {
  const rise = end - start;
  const lean = startRise - rise;
  const rest = 1 - share;
  return start + share * (rise + rest * (lean + share * (rise - endRise - lean + rest * bow)));
}
