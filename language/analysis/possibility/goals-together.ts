/** Goals of one block that no result meets together. */

import { once } from "../../../shared/once.ts";
import type { Criterion } from "../../../shared/plan-model.ts";
import { type BlockInPlan, inOrder, type Remark } from "../subject.ts";
import { extremesAtOdds } from "./extremes-together.ts";
import { goalConflictsIn } from "./goal-conflicts.ts";
import { goalsThatMustBeMet, waysToMeet } from "./goals.ts";
import { momentsAtOdds } from "./moments-together.ts";
import { tooManyShots } from "./needs-together.ts";
import { numbersAtOdds } from "./numbers-together.ts";
import { relatedLines } from "./reasons.ts";

export interface GoalsAtOdds {
  readonly goals: readonly Criterion[];
  /** Goes on after "no result meets these goals together:". */
  readonly why: string;
}

/**
 * At most one conflict of each kind. Asks for each pair of goals; where groups leave a choice, also for each way to choose.
 */
export const goalsAgainstEachOther = once((subject: BlockInPlan): readonly Remark[] => {
  const impossible = new Set(goalConflictsIn(subject).map(({ goal }) => goal));
  const goals = goalsThatMustBeMet(subject.block.success).filter((goal) => !impossible.has(goal));
  const found = atOddsAmong(goals, subject);
  if (found.length > 0) return found.map((atOdds) => remarkOn(atOdds, subject));
  const ways = waysToMeet(subject.block.success) ?? [];
  const open = ways.filter((way) => !way.some((goal) => impossible.has(goal)));
  if (ways.length < 2 || open.length === 0) return [];
  const closed: GoalsAtOdds[] = [];
  for (const way of open) {
    const [atOdds] = atOddsAmong(way, subject);
    if (atOdds === undefined) return [];
    closed.push(atOdds);
  }
  return closed.slice(0, 1).map((atOdds) => remarkOn(atOdds, subject, closed.length > 1));
});

function atOddsAmong(goals: readonly Criterion[], subject: BlockInPlan): GoalsAtOdds[] {
  if (goals.length < 2) return [];
  const found = [
    tooManyShots(goals, subject),
    numbersAtOdds(goals, subject),
    extremesAtOdds(goals, subject),
  ].filter(isFound);
  const said = new Set(found.flatMap((atOdds) => atOdds.goals));
  const others = goals.filter((goal) => !said.has(goal));
  return [...found, ...[momentsAtOdds(others, subject)].filter(isFound)];
}

function isFound(atOdds: GoalsAtOdds | undefined): atOdds is GoalsAtOdds {
  return atOdds !== undefined;
}

/**
 * At the last of the goals.
 *
 * @param isOneOfSeveral whether a group leaves other choices, of which none can be met either
 */
function remarkOn({ goals, why }: GoalsAtOdds, subject: BlockInPlan, isOneOfSeveral = false): Remark {
  const { called = "goal" } = subject;
  const lines = inOrder(goals, subject);
  const last = lines.at(-1) as Criterion;
  return {
    message: `No result meets these ${called}s together${isOneOfSeveral ? ", whatever is chosen from the group" : ""}: ${why}`,
    location: last.location,
    related: relatedLines(lines.slice(0, -1)),
  };
}
