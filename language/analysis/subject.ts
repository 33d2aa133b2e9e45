/** What is looked at: one block of a plan, or a drill by itself, and what is known around it. */
import type { Block, Location } from "../../shared/plan-model.ts";
import { comparePositions } from "../../shared/position.ts";
import type { Vocabulary } from "./possibility/vocabulary.ts";

export interface BlockInPlan {
  readonly block: Block;
  /** All blocks of the plan that have a meaning, by name. */
  readonly others: () => ReadonlyMap<string, Block>;
  readonly vocabulary: Vocabulary;
  /** Whether a part is written in the block itself, and not in its drill. */
  readonly isOwn: (location: Location) => boolean;
  /** What is asked of its shots; a goal where nothing else is said. */
  readonly called?: "goal" | "line";
}

/** Lines in the order in which they stand: what comes from a drill first, then the block's own. */
export function inOrder<Line extends { readonly location: Location }>(
  lines: readonly Line[],
  { isOwn }: BlockInPlan,
): Line[] {
  return lines.toSorted(
    (one, other) =>
      Number(isOwn(one.location)) - Number(isOwn(other.location)) ||
      comparePositions(one.location.range.start, other.location.range.start),
  );
}

/** Something to be said about a line of a block. */
export interface Remark {
  readonly message: string;
  /** The line it is about: one of the block's own, where one has a part in it, else one of its drill. */
  readonly location: Location;
  readonly related: readonly { readonly message: string; readonly location: Location }[];
}
