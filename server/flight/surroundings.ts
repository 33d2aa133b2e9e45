/** Where a ball flies, and what ball. */
import { type Air, REFERENCE_AIR } from "./air.ts";
import { GRAVITY } from "./constants.ts";

export interface Wind {
  /** m/s, where the air goes: positive towards the target and to the right. 10 m above the ground where it grows with height. */
  readonly along: number;
  readonly across: number;
  /** The wind grows with this power of the height, from 1 m up; 0: it is the same at every height. 1/7 is usual over grass. */
  readonly exponent: number;
}

export const STILL: Wind = { along: 0, across: 0, exponent: 0 };

/** A ball's drag and lift as a share of those the coefficients give. */
export interface Ball {
  readonly drag: number;
  readonly lift: number;
}

export const BALL: Ball = { drag: 1, lift: 1 };

export interface Surroundings {
  readonly air: Air;
  readonly wind: Wind;
  readonly ball: Ball;
  /** m/s². */
  readonly gravity: number;
}

/** Reference air: 15 °C, 101 325 Pa, dry, still. */
export const REFERENCE: Surroundings = { air: REFERENCE_AIR, wind: STILL, ball: BALL, gravity: GRAVITY };
