/** Goals that every shot meets that counts: they cannot be missed. */
import { claimOf } from "../../../shared/condition.ts";
import type { Block, Condition, Criterion, Subject } from "../../../shared/plan-model.ts";
import { listed } from "../../criteria/wording.ts";
import { any, type Proposition } from "../reasoning/proposition.ts";
import { WHOLE } from "../reasoning/range.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { sentence } from "../words.ts";
import { conflictsIn } from "./block-conflicts.ts";
import { type Circumstances, circumstancesOf } from "./circumstances.ts";
import { areCompatible, findConflict } from "./conflict.ts";
import { type Demand, demandsOf, proposeDemand } from "./demand.ts";
import { everyGoal } from "./goals.ts";
import { propose } from "./propose.ts";
import { calledGoal, isByOwnLines, named, relatedLines, since } from "./reasons.ts";
import { idleWidth } from "./widths.ts";

/** A way in which a goal may be missed: a shot that is like this. */
interface Miss {
  readonly goal: Criterion;
  readonly propose: (at: Circumstances) => Proposition;
}

/** One question for each goal. */
export function idleGoals(subject: BlockInPlan): Remark[] {
  if (conflictsIn(subject).length > 0) return [];
  const demands = demandsOf(subject).filter(({ role }) => role !== "target");
  return everyGoal(subject.block.success).flatMap((goal) => {
    const width = idleWidth(goal, demands, subject);
    if (width !== undefined) return [width];
    const miss = missOf(goal, subject);
    if (miss === undefined || !canBeMissed(goal)) return [];
    const remark = remarkOn(miss, goal.kind === "statistic" ? demands : leftOut(demands), subject);
    return remark === undefined ? [] : [remark];
  });
}

function leftOut(demands: readonly Demand[]): Demand[] {
  return demands.filter(({ role }) => role === "leave out");
}

/** Undefined where a goal can be missed in ways that no single shot shows. */
function missOf(goal: Criterion, subject: BlockInPlan): Miss | undefined {
  const { block, vocabulary } = subject;
  switch (goal.kind) {
    case "count":
    case "share": {
      // Whoever fails what the block requires is a miss of "at least" and counts for "at most".
      if (block.requirements.length > 0) return undefined;
      if (goal.subject.kind === "meeting") {
        const { condition } = goal.subject;
        return { goal, propose: (at) => propose(condition, goal.bound === "most", at, vocabulary) };
      }
      // That no shot is on target is said of the targets.
      if (goal.bound === "most") return undefined;
      const misses = (at: Circumstances) =>
        block.targets.map(({ condition }) => propose(condition, false, at, vocabulary));
      return { goal, propose: (at) => any(misses(at)) };
    }
    case "statistic": {
      const { kind } = goal.statistic;
      if (kind === "spread" || kind === "span") return undefined;
      const outside = (at: Circumstances): Proposition => {
        const { interval, slack } = claimOf(goal.bounds, at.hand);
        const below = { low: WHOLE.low, high: interval.low - slack };
        const above = { low: interval.high + slack, high: WHOLE.high };
        const sides = [below, above].filter(({ low, high }) => low < high);
        return any(sides.map((range) => ({ kind: "number", metric: goal.metric, range })));
      };
      return { goal, propose: outside };
    }
    default:
      return undefined;
  }
}

function remarkOn(miss: Miss, demands: readonly Demand[], subject: BlockInPlan): Remark | undefined {
  const { block, vocabulary } = subject;
  const { goal } = miss;
  const conditions = [
    ...demands.map(({ condition }) => condition),
    ...("subject" in goal ? conditionsOf(goal.subject, block) : []),
    ...(goal.kind === "statistic"
      ? [{ anyOf: [{ allOf: [{ kind: "number" as const, metric: goal.metric, bounds: goal.bounds }] }] }]
      : []),
  ];
  const among = circumstancesOf(conditions, block.shots);
  const proposing = (asked: Demand | Miss) => (at: Circumstances) =>
    "role" in asked ? proposeDemand(asked, at, subject) : asked.propose(at);
  const all = [...demands, miss];
  const isIdle = among.every(
    (at) =>
      !areCompatible(
        all.map((asked) => proposing(asked)(at)),
        at,
        vocabulary,
      ),
  );
  const conflict = isIdle ? findConflict(all, proposing, among, vocabulary) : undefined;
  // Without the goal it is about a window that no shot can be inside, which is said there.
  if (conflict === undefined || !conflict.demands.includes(miss)) return undefined;
  const others = conflict.demands.filter((asked) => "role" in asked);
  // That every plausible shot is on target is no reason against a target: it may be there for readings gone wrong.
  if ("subject" in goal && goal.subject.kind === "on-target" && others.length === 0) return undefined;
  // A block may well require more than its drill, whose goals it takes along.
  if (isByOwnLines(goal, others, subject)) return undefined;
  const why = since(conflict.because, conflict.circumstances[0], subject);
  const lines = listed(others.map((other) => named(other, subject)));
  const rules = others.length === 1 ? "rules" : "rule";
  const what = others.length === 0 ? "no shot would" : `${lines} ${rules} out every shot that would`;
  return {
    message: sentence(
      `${calledGoal(goal, subject)} cannot be missed: ${what}${why}. Ask for something stricter, or take it out.`,
    ),
    location: goal.location,
    related: relatedLines(others),
  };
}

function conditionsOf(subject: Subject, { targets }: Block): Condition[] {
  return subject.kind === "meeting" ? [subject.condition] : targets.map(({ condition }) => condition);
}

/** A goal whose numbers alone decide it is another mistake. */
function canBeMissed(goal: Criterion): boolean {
  if (goal.kind === "count")
    return goal.bound === "least" ? goal.count > 0 : goal.outOf === null || goal.count < goal.outOf;
  if (goal.kind === "share") return goal.bound === "least" ? goal.share > 0 : goal.share < 1;
  return true;
}
