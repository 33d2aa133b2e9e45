/** Goals that need shots which the block's requirements and left-out shots rule out, or which no shot can be. */

import { once } from "../../../shared/once.ts";
import type { Criterion } from "../../../shared/plan-model.ts";
import { listed } from "../../criteria/wording.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { sentence } from "../words.ts";
import { conflictsIn } from "./block-conflicts.ts";
import { changeTooLarge } from "./changes-too-large.ts";
import { type Circumstances, circumstancesOf } from "./circumstances.ts";
import { type Because, findConflict } from "./conflict.ts";
import { type Demand, demandsOf, proposeDemand } from "./demand.ts";
import { everyGoal, isOpen, shotsAsked } from "./goals.ts";
import { type Need, needsOf } from "./need.ts";
import { byRules, calledGoal, forWhom, named, relatedLines, since } from "./reasons.ts";
import { widthOutOfReach } from "./widths.ts";
import { namesImpossibleWindow } from "./window-conflicts.ts";

export interface GoalConflict {
  readonly goal: Criterion;
  readonly remark: Remark;
  /** The lines that rule out what it needs. */
  readonly against: readonly Demand[];
  /** Whether it concerns players of either hand and of every level. */
  readonly concernsAll: boolean;
}

/** At most one for each goal. A question for each goal and the clubs and players it depends on. */
export const goalConflictsIn = once((subject: BlockInPlan): GoalConflict[] => {
  const demands = demandsOf(subject).filter(({ role }) => role !== "target");
  const isReported = conflictsIn(subject).some(({ demands }) =>
    demands.every(({ role }) => role !== "target"),
  );
  if (isReported) return [];
  return everyGoal(subject.block.success).flatMap((goal) => {
    if (goal.kind === "change") {
      const remark = changeTooLarge(goal, subject);
      return remark === undefined ? [] : [{ goal, remark, against: [], concernsAll: true }];
    }
    const width = widthOutOfReach(goal, demands, subject);
    if (width !== undefined) return [{ goal, ...width, concernsAll: true }];
    if ("subject" in goal && goal.subject.kind === "on-target" && !isAboutMisses(goal)) return []; // said of the targets
    for (const need of needsOf(goal, subject)) {
      const conflict = conflictOf(need, demands, subject);
      if (conflict !== undefined) return [conflict];
    }
    return [];
  });
});

/** Goals that need shots which are off target. They can be met, but not by doing what the block is for. */
export const goalsOffTarget = once((subject: BlockInPlan): GoalConflict[] => {
  if (subject.block.targets.length === 0 || conflictsIn(subject).length > 0) return [];
  const impossible = new Set(goalConflictsIn(subject).map(({ goal }) => goal));
  return everyGoal(subject.block.success).flatMap((goal) => {
    if (impossible.has(goal) || !isAboutGoodShots(goal)) return [];
    for (const need of needsOf(goal, subject)) {
      const conflict = conflictOf(need, demandsOf(subject), subject);
      if (conflict?.against.some(({ role }) => role === "target")) return [conflict];
    }
    return [];
  });
});

/** "At most" so many is about bad shots, and so are the worst of them. */
function isAboutGoodShots(goal: Criterion): boolean {
  if (goal.kind === "statistic") return ["average", "median", "best"].includes(goal.statistic.kind);
  return "subject" in goal && goal.subject.kind === "meeting" && !isAboutMisses(goal);
}

function isAboutMisses(goal: Criterion): boolean {
  return "bound" in goal && goal.bound === "most";
}

function conflictOf(need: Need, demands: readonly Demand[], subject: BlockInPlan): GoalConflict | undefined {
  if (need.count <= 0 || shotsAsked(subject) === 0) return undefined;
  const { block, vocabulary } = subject;
  const among = circumstancesOf(
    [...need.conditions, ...demands.map(({ condition }) => condition)],
    block.shots,
  );
  const conflict = findConflict<Demand | Need>(
    [...demands, need],
    (asked) => (at) => ("role" in asked ? proposeDemand(asked, at, subject) : asked.propose(at)),
    among,
    vocabulary,
  );
  if (conflict === undefined || !conflict.demands.includes(need)) return undefined;
  const players = among.filter((at, index) => among.findIndex((other) => isSamePlayer(at, other)) === index);
  const concerned = players.filter((player) => shotsLeft(player) < need.count);
  if (concerned.length === 0) return undefined;
  const concernsAll = concerned.length === players.length;
  const circumstances = conflict.circumstances.filter((at) => concerned.some((one) => isSamePlayer(at, one)));
  const others = conflict.demands.filter((asked) => "role" in asked);
  const ofWindow = need.conditions.some((condition) => namesImpossibleWindow(condition, vocabulary));
  if (others.length === 0 && ofWindow) return undefined; // said of the window
  const text = message({ ...conflict, others, circumstances, among, concernsAll }, need, subject);
  return {
    goal: need.goal,
    against: others,
    concernsAll,
    remark: {
      message: sentence(text),
      location: need.goal.location,
      related: relatedLines(others),
    },
  };

  /** How many of the block's shots are with a club that leaves the need a chance. */
  function shotsLeft(player: Circumstances): number {
    const closed = (conflict?.circumstances ?? []).filter((at) => isSamePlayer(at, player));
    const isClosed = (club: string | null) => closed.some((at) => at.club === null || at.club === club);
    const left = block.shots.filter(({ club }) => !isClosed(club));
    if (left.length > 0 && isOpen(subject)) return Number.POSITIVE_INFINITY;
    return left.reduce((sum, { count }) => sum + count, 0);
  }
}

function isSamePlayer(one: Circumstances, other: Circumstances): boolean {
  return one.hand === other.hand && one.level === other.level;
}

interface Found {
  readonly others: readonly Demand[];
  readonly circumstances: readonly Circumstances[];
  readonly among: readonly Circumstances[];
  readonly concernsAll: boolean;
  readonly because: Because;
}

function message(found: Found, need: Need, subject: BlockInPlan): string {
  const { others, circumstances, because } = found;
  const at = circumstances[0] as Circumstances;
  const conditions = [...need.conditions, ...others.map(({ condition }) => condition)];
  const why = since(because, at, subject) + byRules(conditions, subject);
  const shots = need.count === 1 ? "a shot" : `${need.count} shots`;
  const needs = `${forWhom(found)}${calledGoal(need.goal, subject)} needs ${shots} ${need.says(at)}`;
  if (others.length === 0) return `${needs}, and there is none${why}. Check the numbers and their units.`;
  const lines = listed(others.map((other) => named(other, subject)));
  if (others.some(({ role }) => role === "target")) {
    return `${needs}, which cannot be on target: see ${lines}${why}. Ask for what is aimed at, or aim at what is asked for.`;
  }
  return `${needs}, which ${lines} ${others.length === 1 ? "rules" : "rule"} out${why}. Change one of them.`;
}
