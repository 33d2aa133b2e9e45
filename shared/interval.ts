/** Which numbers meet the bounds a coach wrote, once the player's hand is known. */
import type { Amount, Bounds, Direction, Hand } from "./plan-model.ts";

/** Numbers from `low` to `high`, SI, target frame; infinite where there is no limit. */
export interface Interval {
  readonly low: number;
  readonly high: number;
  /** True where the limit itself does not belong to the interval (`below`, `above`). */
  readonly lowOpen: boolean;
  readonly highOpen: boolean;
}

/**
 * The sign of a direction word in the target frame for this player: +1 or -1. No word means +1.
 * Words that mirror with the hand are given as a right-hander says them.
 */
export function signOf(direction: Direction | null, hand: Hand): 1 | -1 {
  if (direction === null) return 1;
  const mirrored = direction.handed && hand === "left";
  return mirrored ? (direction.sign === 1 ? -1 : 1) : direction.sign;
}

/** The word for the other side, as the same words are given; undefined where no word was given, or there is none. */
export function oppositeOf(
  direction: Direction | null | undefined,
  directions: readonly Direction[],
): Direction | undefined {
  return directions.find(
    ({ sign, handed }) => sign === -(direction?.sign ?? 0) && handed === direction?.handed,
  );
}

/** The amount as a signed number, SI, target frame. */
export function signed(amount: Amount, hand: Hand): number {
  const value = signOf(amount.direction, hand) * amount.value;
  return value === 0 ? 0 : value; // no negative zero in results
}

/** The interval that bounds describe for a player of this hand. */
export function intervalOf(bounds: Bounds, hand: Hand): Interval {
  switch (bounds.kind) {
    case "within": {
      const centre = signed(bounds.centre, hand);
      return closed(centre - bounds.tolerance.value, centre + bounds.tolerance.value);
    }
    case "between": {
      const one = signed(bounds.one, hand);
      const other = signed(bounds.other, hand);
      return closed(Math.min(one, other), Math.max(one, other));
    }
    default: {
      // A limit is on the amount in its direction: "at least 2° down" lies below -2°, "at most 2° down" above it.
      const limit = signed(bounds.limit, hand);
      const open = bounds.kind === "below" || bounds.kind === "above";
      const larger = bounds.kind === "at least" || bounds.kind === "above";
      const upwards = signOf(bounds.limit.direction, hand) === 1 ? larger : !larger;
      return upwards
        ? { low: limit, high: Infinity, lowOpen: open, highOpen: false }
        : { low: -Infinity, high: limit, lowOpen: false, highOpen: open };
    }
  }
}

function closed(low: number, high: number): Interval {
  return { low, high, lowOpen: false, highOpen: false };
}

/** The unit in which the coach wrote these bounds. */
export function unitOf(bounds: Bounds): Amount["unit"] {
  switch (bounds.kind) {
    case "within":
      return bounds.tolerance.unit;
    case "between":
      return bounds.one.unit;
    default:
      return bounds.limit.unit;
  }
}
