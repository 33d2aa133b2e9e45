/** Which part of the old is which of the new. */
import type { Location } from "../../../shared/plan-model.ts";
import type { Difference } from "./plan-diff.ts";

/** A difference before it is known what it is in. */
export type PartDifference = Omit<Difference, "plan" | "block" | "location"> & {
  /** Null where the part has no place of its own. */
  readonly location: Location | null;
};

/** A part of a plan or block. */
export interface Part {
  readonly text: string;
  readonly location: Location | null;
  /** The same for parts that mean the same. */
  readonly meaning: string;
  /** The same for parts about the same thing, one of which may have become the other. */
  readonly about: string;
  /** What it comes to that this part was the other one, where that can be told. */
  effectFrom(old: Part): string | null;
  /** How far the numbers reach that meet it, where it is a tolerance. SI. */
  readonly width?: number | null;
}

/**
 * What was added, removed and changed. Parts that mean the same are the same; of the others, those about the same thing
 * are taken for each other in their order. Linear in the parts.
 */
export function pairParts(what: string, old: readonly Part[], now: readonly Part[]): PartDifference[] {
  const gone = without(old, now);
  const come = without(now, old);
  const waiting = Map.groupBy(gone, ({ about }) => about);
  const paired = new Set<Part>();
  const found = come.map((part): PartDifference => {
    const before = waiting.get(part.about)?.shift();
    const { text, location } = part;
    if (before === undefined) return { change: "added", what, old: null, new: text, effect: null, location };
    paired.add(before);
    return {
      change: "changed",
      what,
      old: before.text,
      new: text,
      effect: part.effectFrom(before),
      location,
    };
  });
  const removed = gone
    .filter((part) => !paired.has(part))
    .map(({ text, location }): PartDifference => {
      return { change: "removed", what, old: text, new: null, effect: null, location };
    });
  return [...found, ...removed];
}

/** The parts of one list that the other has no equal of, each counted once. */
function without(parts: readonly Part[], others: readonly Part[]): Part[] {
  const left = new Map<string, number>();
  for (const { meaning } of others) left.set(meaning, (left.get(meaning) ?? 0) + 1);
  return parts.filter(({ meaning }) => {
    const count = left.get(meaning) ?? 0;
    if (count > 0) left.set(meaning, count - 1);
    return count === 0;
  });
}
