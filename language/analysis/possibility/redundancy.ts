/** Targets and requirements that say nothing: every shot that meets the others meets them. */
import { listed } from "../../criteria/wording.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { conflictsIn } from "./block-conflicts.ts";
import { type Circumstances, circumstancesOf } from "./circumstances.ts";
import { areCompatible, becauseOf, fewestOf, worldOf } from "./conflict.ts";
import { type Demand, demandsOf, proposeDemand } from "./demand.ts";
import { named, relatedLines, since } from "./reasons.ts";
import { namesImpossibleWindow } from "./window-conflicts.ts";

/** A block that asks for more has other troubles than a line too many. */
const MOST_DEMANDS = 50;

/** The block's own lines that could be left out, the later of two that say the same. A question for each line. */
export function redundantLines(subject: BlockInPlan): Remark[] {
  const demands = demandsOf(subject);
  if (demands.length > MOST_DEMANDS || conflictsIn(subject).length > 0) return [];
  const circumstances = circumstancesOf(
    demands.map(({ condition }) => condition),
    subject.block.shots,
  );
  const remarks: Remark[] = [];
  let left = demands;
  for (const demand of demands.toReversed()) {
    if (demand.role === "leave out" || !subject.isOwn(demand.location) || isLastTarget(demand, left))
      continue;
    const others = left.filter((other) => other !== demand && mayReplace(other, demand));
    const isImplied = (by: readonly Demand[]) =>
      circumstances.every(
        (at) => !areCompatible(withoutMeeting(demand, by, at, subject), at, subject.vocabulary),
      );
    // That every plausible shot meets a line anyway is no reason against it: it may be there for readings gone wrong.
    if (!isImplied(others) || isImplied([])) continue;
    // Anything follows from a window that no shot can be inside, which is said there.
    if (others.some(({ condition }) => namesImpossibleWindow(condition, subject.vocabulary))) continue;
    left = left.filter((other) => other !== demand);
    remarks.push(remark(demand, fewestOf(others, isImplied), circumstances[0] as Circumstances, subject));
  }
  return remarks;
}

/** Without it no shot could be said to be on target. */
function isLastTarget(demand: Demand, left: readonly Demand[]): boolean {
  return demand.role === "target" && left.every((other) => other === demand || other.role !== "target");
}

/** A requirement also decides what counts where targets play no part, so that a target does not replace it. */
function mayReplace(other: Demand, demand: Demand): boolean {
  return demand.role === "target" || other.role !== "target";
}

/** That a shot meets the others and not this one. */
function withoutMeeting(demand: Demand, others: readonly Demand[], at: Circumstances, subject: BlockInPlan) {
  return [
    ...others.map((other) => proposeDemand(other, at, subject)),
    proposeDemand({ ...demand, truth: !demand.truth }, at, subject),
  ];
}

function remark(demand: Demand, by: readonly Demand[], at: Circumstances, subject: BlockInPlan): Remark {
  const lines = listed(by.map((other) => named(other, subject)));
  const propositions = withoutMeeting(demand, by, at, subject);
  const because = becauseOf(propositions, worldOf(propositions, at, subject.vocabulary));
  return {
    message: `Every shot that does what ${lines} ${by.length === 1 ? "asks" : "ask"} for meets this line too${since(because, at, subject)}. Take it out, or ask for more.`,
    location: demand.location,
    related: relatedLines(by),
  };
}
