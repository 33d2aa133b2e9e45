/** The best launch within reach of an attack angle, from a table of searched ones. */

import { type BestLaunch, launchAt } from "./best-launch.ts";
import { BEST_LAUNCHES } from "./best-launch-table.ts";
import type { CoefficientSet } from "./coefficients.ts";
import { DEGREE } from "./constants.ts";

/**
 * As `bestLaunch` finds it, in a hundredth of the time: cubic between the rows of the table in both directions. The carry is right
 * to 0.1 %, and to 0.02 % for ball speeds from 34 to 80 m/s (tests/bench/flight.bench.ts prints it). Undefined outside the
 * table: ball speeds from 24 to 96 m/s, attack angles from 12.5° down to 10° up.
 * @param ballSpeed m/s
 * @param attackAngle radians
 */
export function bestReachable(
  ballSpeed: number,
  attackAngle: number,
  set: CoefficientSet,
): BestLaunch | undefined {
  const { ballSpeeds, attackAngles, [set]: table } = BEST_LAUNCHES;
  const row = placeIn(ballSpeeds, ballSpeed);
  const column = placeIn(attackAngles, attackAngle / DEGREE);
  if (row === undefined || column === undefined) return undefined;
  const spinLoft = interpolate(table.spinLoft, row, column) * DEGREE;
  return {
    launch: launchAt({ ballSpeed }, attackAngle, spinLoft),
    spinLoft,
    carry: interpolate(table.carry, row, column),
  };
}

/** Equally spaced values. */
interface Axis {
  readonly from: number;
  readonly step: number;
  readonly count: number;
}

/** The first of the four entries around a value, and their weights. */
interface Place {
  readonly first: number;
  readonly weights: readonly number[];
}

function placeIn({ from, step, count }: Axis, value: number): Place | undefined {
  const position = (value - from) / step;
  if (!(position >= 0 && position <= count - 1)) return undefined;
  const first = Math.min(Math.max(Math.floor(position) - 1, 0), count - 4);
  const x = position - first;
  // Lagrange, through 0, 1, 2 and 3.
  return {
    first,
    weights: [
      ((x - 1) * (x - 2) * (x - 3)) / -6,
      (x * (x - 2) * (x - 3)) / 2,
      (x * (x - 1) * (x - 3)) / -2,
      (x * (x - 1) * (x - 2)) / 6,
    ],
  };
}

function interpolate(table: readonly (readonly number[])[], row: Place, column: Place): number {
  let sum = 0;
  for (let i = 0; i < 4; i++) {
    const line = table[row.first + i];
    let across = 0;
    for (let j = 0; j < 4; j++) {
      across += (column.weights[j] ?? Number.NaN) * (line?.[column.first + j] ?? Number.NaN);
    }
    sum += (row.weights[i] ?? Number.NaN) * across;
  }
  return sum;
}
