/** The size of the ellipse of two metrics. */
import type { EllipseCriterion } from "../../../shared/plan-model.ts";
import { type Cloud, cloudOf, ellipseOf, factorForShots } from "../../../shared/statistics/ellipse.ts";

/** Of fewer shots nothing is said: two always lie on a line. */
export const FEWEST_SHOTS = 3;

/** What an ellipse is asked for: its area, or one of its axes from end to end. */
type Measured = Pick<EllipseCriterion, "measure" | "share">;

/**
 * The size of the ellipse that would hold `share` of the shots if they scattered as these do: the shots' own ellipse, not
 * the larger one that holds the next shot. SI. Undefined below three shots, and for a share that is none. O(n).
 */
export function measureShots(
  { measure, share }: Measured,
  x: readonly number[],
  y: readonly number[],
): number | undefined {
  const cloud = x.length < FEWEST_SHOTS ? undefined : cloudOf(x, y);
  return cloud === undefined || !(share > 0 && share < 1) ? undefined : sizeOf(measure, cloud, share);
}

function sizeOf(measure: Measured["measure"], cloud: Cloud, share: number): number {
  const { area, long, short } = ellipseOf(cloud, factorForShots(share));
  switch (measure) {
    case "area":
      return area;
    case "major axis":
      return 2 * long;
    case "minor axis":
      return 2 * short;
  }
}
