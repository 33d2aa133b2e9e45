/**
 * One step of the method of J. R. Dormand and P. J. Prince 1980 (J. Comput. Appl. Math. 6, 19–26): seven stages, fifth order, with
 * an estimate of the error from an embedded result of fourth order, and the curve of fourth order through the step that
 * E. Hairer, S. P. Nørsett and G. Wanner give (Solving Ordinary Differential Equations I, section II.6).
 *
 * The stages hold their state in plain variables: arrays or records in this loop, or a function for the forces, cost
 * twice the time. `complete` in motion.ts says the same equations in words.
 */
import { liftSlope, reynoldsTerm } from "./coefficients.ts";
import { BALL_RADIUS } from "./constants.ts";
import type { Moment } from "./moment.ts";
import { type Motion, windShare } from "./motion.ts";

// `A32`: the weight of the second slope where the third is taken; `B`: the weights of the result.
const A21 = 1 / 5;
const A31 = 3 / 40;
const A32 = 9 / 40;
const A41 = 44 / 45;
const A42 = -56 / 15;
const A43 = 32 / 9;
const A51 = 19372 / 6561;
const A52 = -25360 / 2187;
const A53 = 64448 / 6561;
const A54 = -212 / 729;
const A61 = 9017 / 3168;
const A62 = -355 / 33;
const A63 = 46732 / 5247;
const A64 = 49 / 176;
const A65 = -5103 / 18656;
const B1 = 35 / 384;
const B3 = 500 / 1113;
const B4 = 125 / 192;
const B5 = -2187 / 6784;
const B6 = 11 / 84;

// The result of fifth order less that of fourth.
const E1 = 71 / 57_600;
const E3 = -71 / 16_695;
const E4 = 71 / 1920;
const E5 = -17_253 / 339_200;
const E6 = 22 / 525;
const E7 = -1 / 40;

// What makes the cubic through a step a curve of fourth order: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary
// Differential Equations I, section II.6.
const D1 = -12_715_105_075 / 11_282_082_432;
const D3 = 87_487_479_700 / 32_700_410_799;
const D4 = -10_690_763_975 / 1_880_347_072;
const D5 = 701_980_252_875 / 199_316_789_632;
const D6 = -1_453_857_185 / 822_651_844;
const D7 = 69_997_945 / 29_380_423;

/** What the curve through a step needs beyond the step's two ends: see trajectory.ts. */
export interface Bow {
  x: number;
  y: number;
  z: number;
  vx: number;
  vy: number;
  vz: number;
  spin: number;
}

/**
 * Moves the ball from `from`, a complete moment, by `h` seconds to `to`, and writes the bow of the curve between them. Returns the
 * estimated error, in m and m/s.
 */
export function step(motion: Motion, from: Moment, h: number, to: Moment, bow: Bow): number {
  const { axisX, axisY, axisZ, windX, windZ, windExponent, gravity } = motion;
  const { drag, dragBySpin, dragByReynolds, lift, reynoldsPerSpeed, spinLoss } = motion;
  const v1x = from.vx;
  const v1y = from.vy;
  const v1z = from.vz;
  const a1x = from.ax;
  const a1y = from.ay;
  const a1z = from.az;
  const spin1 = from.spin;
  const w1 = from.spinSlope;
  // biome-ignore format: a stage a line
  let v2y = 0, a2x = 0, a2y = 0, a2z = 0, w2 = 0;
  // biome-ignore format: a stage a line
  let v3x = 0, v3y = 0, v3z = 0, a3x = 0, a3y = 0, a3z = 0, w3 = 0;
  // biome-ignore format: a stage a line
  let v4x = 0, v4y = 0, v4z = 0, a4x = 0, a4y = 0, a4z = 0, w4 = 0;
  // biome-ignore format: a stage a line
  let v5x = 0, v5y = 0, v5z = 0, a5x = 0, a5y = 0, a5z = 0, w5 = 0;
  // biome-ignore format: a stage a line
  let v6x = 0, v6y = 0, v6z = 0, a6x = 0, a6y = 0, a6z = 0, w6 = 0;
  // biome-ignore format: a stage a line
  let v7x = 0, v7y = 0, v7z = 0, a7x = 0, a7y = 0, a7z = 0, w7 = 0;
  // biome-ignore format: where the stage is
  let height = 0, vx = 0, vy = 0, vz = 0, spin = 0, speed = 0, spinRatio = 0;
  for (let stage = 2; stage <= 7; stage++) {
    switch (stage) {
      case 2:
        height = from.y + h * (A21 * v1y);
        vx = v1x + h * (A21 * a1x);
        vy = v1y + h * (A21 * a1y);
        vz = v1z + h * (A21 * a1z);
        spin = spin1 + h * (A21 * w1);
        break;
      case 3:
        height = from.y + h * (A31 * v1y + A32 * v2y);
        vx = v1x + h * (A31 * a1x + A32 * a2x);
        vy = v1y + h * (A31 * a1y + A32 * a2y);
        vz = v1z + h * (A31 * a1z + A32 * a2z);
        spin = spin1 + h * (A31 * w1 + A32 * w2);
        break;
      case 4:
        height = from.y + h * (A41 * v1y + A42 * v2y + A43 * v3y);
        vx = v1x + h * (A41 * a1x + A42 * a2x + A43 * a3x);
        vy = v1y + h * (A41 * a1y + A42 * a2y + A43 * a3y);
        vz = v1z + h * (A41 * a1z + A42 * a2z + A43 * a3z);
        spin = spin1 + h * (A41 * w1 + A42 * w2 + A43 * w3);
        break;
      case 5:
        height = from.y + h * (A51 * v1y + A52 * v2y + A53 * v3y + A54 * v4y);
        vx = v1x + h * (A51 * a1x + A52 * a2x + A53 * a3x + A54 * a4x);
        vy = v1y + h * (A51 * a1y + A52 * a2y + A53 * a3y + A54 * a4y);
        vz = v1z + h * (A51 * a1z + A52 * a2z + A53 * a3z + A54 * a4z);
        spin = spin1 + h * (A51 * w1 + A52 * w2 + A53 * w3 + A54 * w4);
        break;
      case 6:
        height = from.y + h * (A61 * v1y + A62 * v2y + A63 * v3y + A64 * v4y + A65 * v5y);
        vx = v1x + h * (A61 * a1x + A62 * a2x + A63 * a3x + A64 * a4x + A65 * a5x);
        vy = v1y + h * (A61 * a1y + A62 * a2y + A63 * a3y + A64 * a4y + A65 * a5y);
        vz = v1z + h * (A61 * a1z + A62 * a2z + A63 * a3z + A64 * a4z + A65 * a5z);
        spin = spin1 + h * (A61 * w1 + A62 * w2 + A63 * w3 + A64 * w4 + A65 * w5);
        break;
      case 7:
        height = from.y + h * (B1 * v1y + B3 * v3y + B4 * v4y + B5 * v5y + B6 * v6y);
        vx = v1x + h * (B1 * a1x + B3 * a3x + B4 * a4x + B5 * a5x + B6 * a6x);
        vy = v1y + h * (B1 * a1y + B3 * a3y + B4 * a4y + B5 * a5y + B6 * a6y);
        vz = v1z + h * (B1 * a1z + B3 * a3z + B4 * a4z + B5 * a5z + B6 * a6z);
        spin = spin1 + h * (B1 * w1 + B3 * w3 + B4 * w4 + B5 * w5 + B6 * w6);
        break;
    }
    const share = windExponent === 0 ? 1 : windShare(height, windExponent);
    const ux = vx - windX * share;
    const uy = vy;
    const uz = vz - windZ * share;
    const cx = axisY * uz - axisZ * uy;
    const cy = axisZ * ux - axisX * uz;
    const cz = axisX * uy - axisY * ux;
    const squared = ux * ux + uy * uy + uz * uz;
    speed = Math.sqrt(squared);
    spinRatio = squared > 0 ? (BALL_RADIUS * spin * Math.sqrt(cx * cx + cy * cy + cz * cz)) / squared : 0;
    let slowing = drag + dragBySpin * spinRatio;
    if (dragByReynolds !== 0) slowing += dragByReynolds * reynoldsTerm(reynoldsPerSpeed * speed);
    slowing *= speed;
    const lifting = lift * spin * liftSlope(spinRatio);
    const ax = lifting * cx - slowing * ux;
    const ay = lifting * cy - slowing * uy - gravity;
    const az = lifting * cz - slowing * uz;
    const spinSlope = -spinLoss * spin * speed;
    // biome-ignore format: a stage a line
    switch (stage) {
      case 2: v2y = vy; a2x = ax; a2y = ay; a2z = az; w2 = spinSlope; break;
      case 3: v3x = vx; v3y = vy; v3z = vz; a3x = ax; a3y = ay; a3z = az; w3 = spinSlope; break;
      case 4: v4x = vx; v4y = vy; v4z = vz; a4x = ax; a4y = ay; a4z = az; w4 = spinSlope; break;
      case 5: v5x = vx; v5y = vy; v5z = vz; a5x = ax; a5y = ay; a5z = az; w5 = spinSlope; break;
      case 6: v6x = vx; v6y = vy; v6z = vz; a6x = ax; a6y = ay; a6z = az; w6 = spinSlope; break;
      case 7: v7x = vx; v7y = vy; v7z = vz; a7x = ax; a7y = ay; a7z = az; w7 = spinSlope; break;
    }
  }
  to.time = from.time + h;
  to.x = from.x + h * (B1 * v1x + B3 * v3x + B4 * v4x + B5 * v5x + B6 * v6x);
  to.y = height;
  to.z = from.z + h * (B1 * v1z + B3 * v3z + B4 * v4z + B5 * v5z + B6 * v6z);
  to.vx = v7x;
  to.vy = v7y;
  to.vz = v7z;
  to.spin = spin;
  to.ax = a7x;
  to.ay = a7y;
  to.az = a7z;
  to.spinSlope = w7;
  to.airspeed = speed;
  to.spinRatio = spinRatio;
  bow.x = D1 * v1x + D3 * v3x + D4 * v4x + D5 * v5x + D6 * v6x + D7 * v7x;
  bow.y = D1 * v1y + D3 * v3y + D4 * v4y + D5 * v5y + D6 * v6y + D7 * v7y;
  bow.z = D1 * v1z + D3 * v3z + D4 * v4z + D5 * v5z + D6 * v6z + D7 * v7z;
  bow.vx = D1 * a1x + D3 * a3x + D4 * a4x + D5 * a5x + D6 * a6x + D7 * a7x;
  bow.vy = D1 * a1y + D3 * a3y + D4 * a4y + D5 * a5y + D6 * a6y + D7 * a7y;
  bow.vz = D1 * a1z + D3 * a3z + D4 * a4z + D5 * a5z + D6 * a6z + D7 * a7z;
  bow.spin = D1 * w1 + D3 * w3 + D4 * w4 + D5 * w5 + D6 * w6 + D7 * w7;
  // Squares of the error in the place, the velocity and the speed of the surface.
  const place =
    (E1 * v1x + E3 * v3x + E4 * v4x + E5 * v5x + E6 * v6x + E7 * v7x) ** 2 +
    (E1 * v1y + E3 * v3y + E4 * v4y + E5 * v5y + E6 * v6y + E7 * v7y) ** 2 +
    (E1 * v1z + E3 * v3z + E4 * v4z + E5 * v5z + E6 * v6z + E7 * v7z) ** 2;
  const velocity =
    (E1 * a1x + E3 * a3x + E4 * a4x + E5 * a5x + E6 * a6x + E7 * a7x) ** 2 +
    (E1 * a1y + E3 * a3y + E4 * a4y + E5 * a5y + E6 * a6y + E7 * a7y) ** 2 +
    (E1 * a1z + E3 * a3z + E4 * a4z + E5 * a5z + E6 * a6z + E7 * a7z) ** 2;
  const surface = (BALL_RADIUS * (E1 * w1 + E3 * w3 + E4 * w4 + E5 * w5 + E6 * w6 + E7 * w7)) ** 2;
  return h * Math.sqrt((place + velocity + surface) / 7);
}
