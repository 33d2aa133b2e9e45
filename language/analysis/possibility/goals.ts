/** The goals and the shots of a block. */
import type { Criterion, GroupCriterion } from "../../../shared/plan-model.ts";
import { withSharedError } from "../../criteria/group/evaluate.ts";
import type { BlockInPlan } from "../subject.ts";

/** The goals of a block by themselves, those in groups in which all must be met among them. */
export function goalsThatMustBeMet(goals: readonly Criterion[]): Criterion[] {
  return goals.flatMap((goal) => {
    if (goal.kind !== "group") return [goal];
    const needsAll = goal.needed === "all" || goal.needed === goal.criteria.length;
    return needsAll || goal.criteria.length === 1 ? goalsThatMustBeMet(goal.criteria) : [];
  });
}

/** More ways, or goals in a group that leaves a choice, are not looked at. */
const MOST_WAYS = 16;
const MOST_IN_GROUP = 8;

/**
 * The goals that are met in each of the ways in which all of these can be, where groups leave a choice; undefined where the
 * ways are many.
 */
export function waysToMeet(goals: readonly Criterion[]): Criterion[][] | undefined {
  let ways: Criterion[][] = [[]];
  for (const goal of goals) {
    const more = goal.kind === "group" ? waysToMeetGroup(goal) : [[goal]];
    if (more === undefined || ways.length * more.length > MOST_WAYS) return undefined;
    ways = ways.flatMap((way) => more.map((another) => [...way, ...another]));
  }
  return ways;
}

function waysToMeetGroup({ needed, criteria }: GroupCriterion): Criterion[][] | undefined {
  const count = needed === "all" ? criteria.length : needed === "any" ? 1 : needed;
  if (count === criteria.length) return waysToMeet(criteria);
  if (count < 1 || count > criteria.length || criteria.length > MOST_IN_GROUP) return undefined;
  const ways = choices(criteria, count).map(waysToMeet);
  return ways.some((way) => way === undefined) ? undefined : ways.flatMap((way) => way ?? []);
}

/** So many of them, in each way. */
function choices(goals: readonly Criterion[], count: number): Criterion[][] {
  let chosen: Criterion[][] = [[]];
  for (const [index, goal] of goals.entries()) {
    const left = goals.length - index;
    chosen = chosen.flatMap((some) => [
      ...(some.length < count ? [[...some, goal]] : []),
      ...(some.length + left > count ? [some] : []),
    ]);
  }
  return chosen;
}

/** Every goal of a block by itself. */
export function everyGoal(goals: readonly Criterion[]): Criterion[] {
  return goals.flatMap((goal) => (goal.kind === "group" ? everyGoal(goal.criteria) : [goal]));
}

/** The same goals in the same order, each at the confidence at which it is judged in the groups it is in. */
export function everyGoalAsJudged(goals: readonly Criterion[]): Criterion[] {
  return goals.flatMap((goal) =>
    goal.kind === "group" ? everyGoalAsJudged(withSharedError(goal).criteria) : [goal],
  );
}

/** The shots a block asks for. */
export function shotsAsked({ block }: BlockInPlan): number {
  return block.shots.reduce((sum, { count }) => sum + count, 0);
}

/** Whether more shots than asked for may be hit. */
export function isOpen({ block }: BlockInPlan): boolean {
  return block.shots.length === 0 || block.shots.some(({ open }) => open);
}

/** The most shots that a goal over all of them may be about. */
export function mostShots(subject: BlockInPlan): number {
  return isOpen(subject) ? Number.POSITIVE_INFINITY : shotsAsked(subject);
}
