/** The lines of a block that ask something of every shot that is to count. */

import type { Condition, Location } from "../../../shared/plan-model.ts";
import { comparePositions } from "../../../shared/position.ts";
import { once } from "../once.ts";
import type { Proposition } from "../reasoning/proposition.ts";
import type { BlockInPlan } from "../subject.ts";
import type { Circumstances } from "./circumstances.ts";
import { propose } from "./propose.ts";

export interface Demand {
  readonly role: "target" | "require" | "leave out";
  /** The line as it was written, with what parameters stand for. */
  readonly text: string;
  readonly condition: Condition;
  /** Whether a shot must meet the condition, or must not. */
  readonly truth: boolean;
  readonly location: Location;
}

/** What comes from a drill first, then the block's own lines, in the order of the text. */
export const demandsOf = once(({ block, isOwn }: BlockInPlan): readonly Demand[] => {
  const { targets, requirements, leaveOut } = block;
  const demands: Demand[] = [
    ...targets.map((line) => ({ ...line, role: "target" as const, truth: true })),
    ...requirements.map((line) => ({ ...line, role: "require" as const, truth: true })),
    ...leaveOut.map((line) => ({ ...line, role: "leave out" as const, truth: false })),
  ];
  return demands.sort(
    (one, other) =>
      Number(isOwn(one.location)) - Number(isOwn(other.location)) ||
      comparePositions(one.location.range.start, other.location.range.start),
  );
});

/** That a shot does what it asks for. */
export function proposeDemand(
  { condition, truth }: Demand,
  at: Circumstances,
  { vocabulary }: Pick<BlockInPlan, "vocabulary">,
): Proposition {
  return propose(condition, truth, at, vocabulary);
}
