/** Where the flight model may speak: judged at the launch. */

import { SS94_FLAT } from "./coefficients.ts";
import { axisOf, type Launch, startOf } from "./launch.ts";
import { complete, motionOf } from "./motion.ts";
import type { Surroundings } from "./surroundings.ts";

/**
 * - supported: within what was measured of balls in flight
 * - extrapolated: beyond it (short irons, wedges, very little spin): a value to be shown with a warning
 * - unsupported: no value is to be shown
 */
export type Status = "supported" | "extrapolated" | "unsupported";

export interface Validity {
  readonly status: Status;
  /** At the launch. */
  readonly reynolds: number;
  readonly spinRatio: number;
  /** Why it is not supported, in words; null where it is. */
  readonly reason: string | null;
}

/** Our own limits, from the ranges in which drag and lift of balls were measured; those of the constants are narrower. */
const LIMITS = {
  supported: { reynolds: 100_000, leastSpin: 0.05, mostSpin: 0.3 },
  extrapolated: { reynolds: 70_000, leastSpin: 0.02, mostSpin: 0.6 },
} as const;

/** How far a flight of this launch can be relied on. */
export function validityOf(launch: Launch, surroundings: Surroundings): Validity {
  const start = startOf(launch);
  const motion = motionOf(axisOf(launch), surroundings, SS94_FLAT);
  complete(start, motion);
  const reynolds = motion.reynoldsPerSpeed * start.airspeed;
  const { spinRatio } = start;
  const judged = { reynolds, spinRatio };
  if (!(start.vy > 0)) return { ...judged, status: "unsupported", reason: "the ball does not start upwards" };
  const outside = whyOutside(judged, LIMITS.extrapolated);
  if (outside !== null) {
    return { ...judged, status: "unsupported", reason: `${outside} than the flight model is made for` };
  }
  const beyond = whyOutside(judged, LIMITS.supported);
  if (beyond !== null) {
    const reason = `${beyond} than in the measurements behind the flight model`;
    return { ...judged, status: "extrapolated", reason };
  }
  return { ...judged, status: "supported", reason: null };
}

/** The less certain of two. */
export function worse(one: Validity, other: Validity): Validity {
  return RANK[other.status] > RANK[one.status] ? other : one;
}

const RANK: Readonly<Record<Status, number>> = { supported: 0, extrapolated: 1, unsupported: 2 };

function whyOutside(
  { reynolds, spinRatio }: { readonly reynolds: number; readonly spinRatio: number },
  limits: (typeof LIMITS)[keyof typeof LIMITS],
): string | null {
  if (!(reynolds >= limits.reynolds)) return "the ball starts slower through the air";
  if (!(spinRatio >= limits.leastSpin)) return "the ball spins less for its speed";
  return spinRatio > limits.mostSpin ? "the ball spins more for its speed" : null;
}
