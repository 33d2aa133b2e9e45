/**
 * Drag and lift of a dimpled ball.
 *
 * The form C_D = 0.24 + 0.18 S + 0.06 sin(π (Re − 90 000)/200 000), C_L = 0.54 S^0.4 is taken for that of A. J. Smits and
 * D. R. Smith 1994 (Science and Golf II), stated for driver shots: 70 000 < Re < 210 000, 0.08 < S < 0.20. The source itself
 * was not seen, so none of its numbers may be shown as published. Outside that range the Reynolds number is held at
 * its ends and the lift at the value of S = 0.35, both our own choice: else the drag would fall where measured drag
 * rises, and the lift grow where measured lift levels off.
 */

/** C_D = drag + dragBySpin · S + dragByReynolds · sin(…),  C_L = lift · min(S, 0.35)^0.4. */
export interface Coefficients {
  readonly drag: number;
  readonly dragBySpin: number;
  readonly dragByReynolds: number;
  readonly lift: number;
}

/** The whole form. */
export const SS94: Coefficients = { drag: 0.24, dragBySpin: 0.18, dragByReynolds: 0.06, lift: 0.54 };

/** Without the Reynolds term, the least certain part of it. The default. */
export const SS94_FLAT: Coefficients = { ...SS94, dragByReynolds: 0 };

/** By name. What is shown is the first; how far the other is from it is the model's own uncertainty. */
export const COEFFICIENTS = { ss94_flat: SS94_FLAT, ss94: SS94 } as const;
export type CoefficientSet = keyof typeof COEFFICIENTS;

/** The lift grows no further from this spin ratio on. */
export const LIFT_CEILING = 0.35;

/** The drag does not change with the Reynolds number outside these. */
export const REYNOLDS_LOW = 70_000;
export const REYNOLDS_HIGH = 210_000;

/** Drag coefficient at a spin ratio and a Reynolds number. */
export function dragCoefficient(coefficients: Coefficients, spinRatio: number, reynolds: number): number {
  const { drag, dragBySpin, dragByReynolds } = coefficients;
  return drag + dragBySpin * spinRatio + (dragByReynolds === 0 ? 0 : dragByReynolds * reynoldsTerm(reynolds));
}

/** Lift coefficient at a spin ratio. */
export function liftCoefficient({ lift }: Coefficients, spinRatio: number): number {
  return lift * liftSlope(spinRatio) * spinRatio;
}

/** The part of the drag that changes with the Reynolds number, from −1 to 1. */
export function reynoldsTerm(reynolds: number): number {
  const held = Math.min(Math.max(reynolds, REYNOLDS_LOW), REYNOLDS_HIGH);
  return Math.sin((Math.PI * (held - 90_000)) / 200_000);
}

const CEILING_POWER = LIFT_CEILING ** 0.4;
const CELLS = 1024;
const CELL = LIFT_CEILING / CELLS;
/** Below, the power is too steep for cubics. */
const TABULATED_FROM = 120 * CELL;
const TABLE = cubics();

/**
 * min(S, 0.35)^0.4 / S, and 0 where S is not positive: what the spin must be multiplied with to get the lift.
 * From a table of cubics, since this power is half of what a flight costs; the table is right to 1.5e-10 of the value.
 */
export function liftSlope(spinRatio: number): number {
  if (spinRatio >= LIFT_CEILING) return CEILING_POWER / spinRatio;
  if (spinRatio < TABULATED_FROM) return spinRatio > 0 ? spinRatio ** -0.6 : 0;
  const place = spinRatio / CELL;
  const cell = place | 0;
  const within = place - cell;
  const first = 4 * cell;
  return (
    (TABLE[first] as number) +
    within *
      ((TABLE[first + 1] as number) +
        within * ((TABLE[first + 2] as number) + within * (TABLE[first + 3] as number)))
  );
}

/** Cubics that have the value and the slope of S^-0.6 at both ends of each cell. */
function cubics(): Float64Array {
  const table = new Float64Array(4 * CELLS);
  for (let cell = 1; cell < CELLS; cell++) {
    const [low, high] = [cell * CELL, (cell + 1) * CELL];
    const [value, nextValue] = [low ** -0.6, high ** -0.6];
    const [slope, nextSlope] = [-0.6 * CELL * low ** -1.6, -0.6 * CELL * high ** -1.6];
    const rise = nextValue - value;
    table.set([value, slope, 3 * rise - 2 * slope - nextSlope, slope + nextSlope - 2 * rise], 4 * cell);
  }
  return table;
}
