/** The goals and the shots of a block. */
import type { Criterion } from "../../../shared/plan-model.ts";
import type { BlockInPlan } from "../subject.ts";

/** The goals of a block by themselves, those in groups in which all must be met among them. */
export function goalsThatMustBeMet(goals: readonly Criterion[]): Criterion[] {
  return goals.flatMap((goal) => {
    if (goal.kind !== "group") return [goal];
    const needsAll = goal.needed === "all" || goal.needed === goal.criteria.length;
    return needsAll || goal.criteria.length === 1 ? goalsThatMustBeMet(goal.criteria) : [];
  });
}

/** Every goal of a block by itself. */
export function everyGoal(goals: readonly Criterion[]): Criterion[] {
  return goals.flatMap((goal) => (goal.kind === "group" ? everyGoal(goal.criteria) : [goal]));
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
