/** Goals of one block that no result meets together. */

import type { Criterion } from "../../../shared/plan-model.ts";
import { comparePositions } from "../../../shared/position.ts";
import { once } from "../once.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { goalConflictsIn } from "./goal-conflicts.ts";
import { goalsThatMustBeMet } from "./goals.ts";
import { tooManyShots } from "./needs-together.ts";
import { numbersAtOdds } from "./numbers-together.ts";

export interface GoalsAtOdds {
  readonly goals: readonly Criterion[];
  /** Goes on after "no result meets these goals together:". */
  readonly why: string;
}

/** At most one conflict of each kind. Asks for each pair of goals. */
export const goalsAgainstEachOther = once((subject: BlockInPlan): readonly Remark[] => {
  const impossible = new Set(goalConflictsIn(subject).map(({ goal }) => goal));
  const goals = goalsThatMustBeMet(subject.block.success).filter((goal) => !impossible.has(goal));
  if (goals.length < 2) return [];
  const found = [tooManyShots(goals, subject), numbersAtOdds(goals, subject)];
  return found.flatMap((atOdds) => (atOdds === undefined ? [] : [remarkOn(atOdds, subject)]));
});

/** At the last of the goals. */
function remarkOn({ goals, why }: GoalsAtOdds, { isOwn, called = "goal" }: BlockInPlan): Remark {
  const inOrder = [...goals].sort(
    (one, other) =>
      Number(isOwn(one.location)) - Number(isOwn(other.location)) ||
      comparePositions(one.location.range.start, other.location.range.start),
  );
  const last = inOrder.at(-1) as Criterion;
  return {
    message: `No result meets these ${called}s together: ${why}`,
    location: last.location,
    related: inOrder.slice(0, -1).map(({ text, location }) => ({ message: text, location })),
  };
}
