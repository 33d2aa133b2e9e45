/** The ball, gravity, and the units the sources of the model are written in. SI. */

/** Mass of the ball, kg: the most that the rules of the sport allow. */
export const BALL_MASS = 0.04593;

/** Diameter of the ball, m: the least that the rules of the sport allow. */
export const BALL_DIAMETER = 0.04267;
export const BALL_RADIUS = BALL_DIAMETER / 2;
export const BALL_AREA = Math.PI * BALL_RADIUS * BALL_RADIUS;

/** Standard gravity, m/s² (ISO 80000-3). Constant along the flight. */
export const GRAVITY = 9.80665;

/**
 * Spin lost per metre of path and ball radius, in air of `SPIN_DECAY_DENSITY`. The form (spin is lost in proportion to spin
 * and speed) is that of A. J. Smits and D. R. Smith 1994, as reported by A. M. Nathan 2008; the size agrees with the
 * one digit that P. Dewhurst 2015 gives for it.
 */
export const SPIN_DECAY = 2e-5;
export const SPIN_DECAY_DENSITY = 1.225;

export const DEGREE = Math.PI / 180;
/** One turn a minute in rad/s. */
export const RPM = (2 * Math.PI) / 60;
/** 0 °C in kelvin. */
export const ZERO_CELSIUS = 273.15;
