/** Places in a text, by line and character, both from 0. */
import type { Position } from "./plan-model.ts";

/** Negative where the first comes before the second, 0 at the same place: to sort by. */
export function comparePositions(one: Position, other: Position): number {
  return one.line - other.line || one.character - other.character;
}

export function isBefore(one: Position, other: Position): boolean {
  return comparePositions(one, other) < 0;
}
