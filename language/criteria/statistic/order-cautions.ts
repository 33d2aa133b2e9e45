/** Statements about ability take shots for independent of each other. */
import { orderOfShots } from "../../../shared/statistics/order-of-shots.ts";

/** Says where the shots, in the order they were hit, do not look it: the limits are then less sure than they say. */
export function orderCautions(values: readonly number[]): string[] {
  const order = orderOfShots(values);
  if (order?.drifts) return [DRIFT];
  return order?.followsOn ? [FOLLOWING] : [];
}

const DRIFT = "The shots drift from the first to the last, so that the limits are less sure than they say.";

const FOLLOWING =
  "Each shot takes after the one before it, or swings back from it, so that the limits are less sure than they say.";
