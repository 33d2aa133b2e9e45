/** The carry of a launch in reference air. */
import { COEFFICIENTS, type CoefficientSet } from "./coefficients.ts";
import { fly } from "./fly.ts";
import type { Launch } from "./launch.ts";
import { REFERENCE } from "./surroundings.ts";

/**
 * The tolerances of a step by which carries are compared with each other. The first set gives the number, to half a
 * millimetre; the second only says how uncertain that is, and a centimetre is enough, in a third of the steps.
 */
export const TOLERANCES: Readonly<Record<CoefficientSet, number>> = { ss94_flat: 2e-5, ss94: 1e-3 };

/**
 * m, by each set. Still air is the same in all directions, so that where the ball starts to makes no difference. The last answer is
 * kept, since everything that is estimated of one shot asks for the same.
 */
export function referenceCarry(launch: Launch): Readonly<Record<CoefficientSet, number>> {
  if (last !== undefined && isSame(last.launch, launch)) return last.carry;
  const ahead = { ...launch, startDirection: 0 };
  const carry = {
    ss94_flat: fly(ahead, REFERENCE, COEFFICIENTS.ss94_flat, TOLERANCES.ss94_flat).carry,
    ss94: fly(ahead, REFERENCE, COEFFICIENTS.ss94, TOLERANCES.ss94).carry,
  };
  last = { launch, carry };
  return carry;
}

let last: { readonly launch: Launch; readonly carry: Readonly<Record<CoefficientSet, number>> } | undefined;

function isSame(one: Launch, other: Launch): boolean {
  return (
    one.ballSpeed === other.ballSpeed &&
    one.launchAngle === other.launchAngle &&
    one.spinRate === other.spinRate &&
    one.spinAxis === other.spinAxis
  );
}
