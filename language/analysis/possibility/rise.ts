/** What is claimed of a change. */
import { claimOf } from "../../../shared/condition.ts";
import type { Hand, Movement } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { WHOLE } from "../reasoning/range.ts";

/** Where now − before lies: in SI and the target frame, or as a share where the amount is one in %. */
export function riseClaimed(movement: Movement, hand: Hand): Interval {
  const bounds = { kind: "at least" as const, limit: movement.amount };
  const { value } = movement.amount;
  if (movement.kind === "stays") return { low: -value, high: value };
  if (movement.kind === "moves") {
    const { interval } = claimOf({ ...bounds, kind: `at ${movement.bound}` }, hand);
    return interval;
  }
  const rise: Interval =
    movement.bound === "least" ? { low: value, high: WHOLE.high } : { low: WHOLE.low, high: value };
  return movement.kind === "rises" ? rise : { low: -rise.high, high: -rise.low };
}
