/** The lines of a block that ask something of every shot that is to count. */

import { once } from "../../../shared/once.ts";
import type { Condition, Location } from "../../../shared/plan-model.ts";
import type { Proposition } from "../reasoning/proposition.ts";
import { type BlockInPlan, inOrder } from "../subject.ts";
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

/** In the order in which they stand. */
export const demandsOf = once((subject: BlockInPlan): readonly Demand[] => {
  const { targets, requirements, leaveOut } = subject.block;
  const demands: Demand[] = [
    ...targets.map((line) => ({ ...line, role: "target" as const, truth: true })),
    ...requirements.map((line) => ({ ...line, role: "require" as const, truth: true })),
    ...leaveOut.map((line) => ({ ...line, role: "leave out" as const, truth: false })),
  ];
  return inOrder(demands, subject);
});

/** That a shot does what it asks for. */
export function proposeDemand(
  { condition, truth }: Demand,
  at: Circumstances,
  { vocabulary }: Pick<BlockInPlan, "vocabulary">,
): Proposition {
  return propose(condition, truth, at, vocabulary);
}
