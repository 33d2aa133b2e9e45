/**
 * The launch that carries farthest, straight, in reference air. Found by searching: best-carry.ts knows it from a table.
 *
 * A club that comes to the ball at an attack angle leaves one freedom, the loft at contact, and with it the spin loft φ: the
 * ball launches at A + φ − δ and spins at (5/2) V sin δ / r, where δ is how far the start leans from the face normal
 * (impact.ts). Carry has one maximum over φ in all cases that were looked at. The spin rests on a rigid ball and is
 * uncertain by some 15 %.
 */
import type { Coefficients } from "./coefficients.ts";
import { DEGREE, RPM } from "./constants.ts";
import { fly } from "./fly.ts";
import { launchOf, strikeOf } from "./impact.ts";
import type { Launch } from "./launch.ts";
import { rootBetween } from "./root.ts";
import { REFERENCE } from "./surroundings.ts";

/** What is given, m/s. A ball speed is kept whatever the loft; with a club speed more loft costs ball speed. */
export type Given = { readonly ballSpeed: number } | { readonly clubSpeed: number };

export interface BestLaunch {
  readonly launch: Launch;
  /** Radians; null where launch angle and spin were free of any club. */
  readonly spinLoft: number | null;
  readonly carry: number;
}

/** The span of launches that carry at least so much. */
export interface LaunchWindow {
  readonly low: Launch;
  readonly high: Launch;
}

/** The spin lofts that are searched. */
const LEAST_LOFT = 2 * DEGREE;
const MOST_LOFT = 45 * DEGREE;

/** Within rounding of the integrator, so that maxima can be told. */
const TOLERANCE = 1e-10;

/** The best launch at an attack angle (radians). */
export function bestLaunch(given: Given, attackAngle: number, coefficients: Coefficients): BestLaunch {
  const at = (spinLoft: number) => launchAt(given, attackAngle, spinLoft);
  const low = Math.max(LEAST_LOFT, upwards(attackAngle));
  const spinLoft = highest((loft) => carryOf(at(loft), coefficients), low, MOST_LOFT, 0.1 * DEGREE);
  return { launch: at(spinLoft), spinLoft, carry: carryOf(at(spinLoft), coefficients) };
}

/** The launches with this attack angle that carry at least `share` of the best: typically ±2° and ±500 rpm for 99 %. */
export function launchWindow(
  given: Given,
  attackAngle: number,
  coefficients: Coefficients,
  share = 0.99,
): LaunchWindow {
  const { carry, spinLoft } = bestLaunch(given, attackAngle, coefficients);
  const at = (loft: number) => launchAt(given, attackAngle, loft);
  const over = (loft: number) => carryOf(at(loft), coefficients) - share * carry;
  const best = spinLoft ?? 0;
  const edge = (end: number) =>
    at(over(end) >= 0 ? end : rootBetween(over, best, end, over(best), over(end), 1e-7));
  return { low: edge(Math.max(LEAST_LOFT, upwards(attackAngle))), high: edge(MOST_LOFT) };
}

/** The best launch of all at a ball speed, launch angle and spin both free: an upper bound. */
export function bestFreeLaunch(ballSpeed: number, coefficients: Coefficients): BestLaunch {
  const at = (launchAngle: number, spinRate: number): Launch => ({
    ballSpeed,
    launchAngle,
    startDirection: 0,
    spinRate,
    spinAxis: 0,
  });
  const bestSpin = (launchAngle: number) =>
    highest((spin) => carryOf(at(launchAngle, spin), coefficients), 200 * RPM, 9000 * RPM, 20 * RPM);
  const launchAngle = highest(
    (angle) => carryOf(at(angle, bestSpin(angle)), coefficients),
    2 * DEGREE,
    45 * DEGREE,
    0.1 * DEGREE,
  );
  const launch = at(launchAngle, bestSpin(launchAngle));
  return { launch, spinLoft: null, carry: carryOf(launch, coefficients) };
}

/** The straight launch of a spin loft at an attack angle. */
export function launchAt(given: Given, attackAngle: number, spinLoft: number): Launch {
  const strike = strikeOf({ dynamicLoft: attackAngle + spinLoft, faceAngle: 0, attackAngle, clubPath: 0 });
  return launchOf(strike, "clubSpeed" in given ? given.clubSpeed : given.ballSpeed / strike.ballSpeed);
}

/** The spin loft from which on the ball starts upwards, and a little more. */
function upwards(attackAngle: number): number {
  // The start leans by less than a fifth of the spin loft.
  return attackAngle < 0 ? -attackAngle / 0.8 + 0.1 * DEGREE : 0;
}

function carryOf(launch: Launch, coefficients: Coefficients): number {
  return launch.launchAngle > 0 ? fly(launch, REFERENCE, coefficients, TOLERANCE).carry : 0;
}

/** Where a function with one maximum has it: where it is the same `near` to either side. The end, where it only rises or falls. */
function highest(f: (x: number) => number, low: number, high: number, near: number): number {
  const rise = (x: number) => f(x + near) - f(x - near);
  const [from, to] = [low + near, high - near];
  const [atFrom, atTo] = [rise(from), rise(to)];
  if (atFrom <= 0) return low;
  return atTo >= 0 ? high : rootBetween(rise, from, to, atFrom, atTo, 1e-7);
}
