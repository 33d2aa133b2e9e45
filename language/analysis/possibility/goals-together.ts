/** Goals of one block that no result meets together. */

import { once } from "../../../shared/once.ts";
import type { Criterion } from "../../../shared/plan-model.ts";
import { type BlockInPlan, inOrder, type Remark } from "../subject.ts";
import { goalConflictsIn } from "./goal-conflicts.ts";
import { goalsThatMustBeMet } from "./goals.ts";
import { momentsAtOdds } from "./moments-together.ts";
import { tooManyShots } from "./needs-together.ts";
import { numbersAtOdds } from "./numbers-together.ts";
import { relatedLines } from "./reasons.ts";

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
  const found = [tooManyShots(goals, subject), numbersAtOdds(goals, subject)].filter(isFound);
  const said = new Set(found.flatMap((atOdds) => atOdds.goals));
  const others = goals.filter((goal) => !said.has(goal));
  const more = [momentsAtOdds(others, subject)].filter(isFound);
  return [...found, ...more].map((atOdds) => remarkOn(atOdds, subject));
});

function isFound(atOdds: GoalsAtOdds | undefined): atOdds is GoalsAtOdds {
  return atOdds !== undefined;
}

/** At the last of the goals. */
function remarkOn({ goals, why }: GoalsAtOdds, subject: BlockInPlan): Remark {
  const { called = "goal" } = subject;
  const lines = inOrder(goals, subject);
  const last = lines.at(-1) as Criterion;
  return {
    message: `No result meets these ${called}s together: ${why}`,
    location: last.location,
    related: relatedLines(lines.slice(0, -1)),
  };
}
