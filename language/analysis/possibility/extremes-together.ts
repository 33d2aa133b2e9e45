/** A best or worst shot that leaves no shot of a kind that another goal needs. */
import { claimOf } from "../../../shared/condition.ts";
import type { Criterion, StatisticCriterion } from "../../../shared/plan-model.ts";
import { metricsIn } from "../../criteria/condition.ts";
import type { Proposition } from "../reasoning/proposition.ts";
import type { BlockInPlan } from "../subject.ts";
import { type Circumstances, circumstancesOf } from "./circumstances.ts";
import { areCompatible } from "./conflict.ts";
import type { GoalsAtOdds } from "./goals-together.ts";
import { everyShotEnters, type Need, needsOf } from "./need.ts";
import { named } from "./reasons.ts";

/**
 * Where not every shot enters a number, or their number is open, it is not known how many shots keep to the best and the worst
 * one. But those that another goal needs do: they meet what is required, and their reading is known.
 */
export function extremesAtOdds(goals: readonly Criterion[], subject: BlockInPlan): GoalsAtOdds | undefined {
  if (everyShotEnters(subject)) return undefined; // they are counted
  for (const goal of goals.filter(isExtreme)) {
    if (subject.vocabulary.metrics.get(goal.metric)?.directions.length !== 0) continue;
    for (const other of goals) {
      if (other === goal || !needsOf(other, subject).some((need) => isRuledOut(need, goal, subject)))
        continue;
      const why = `${named(goal, subject)} leaves no shot of the kind that ${named(other, subject)} needs. Change one of them.`;
      return { goals: [goal, other], why };
    }
  }
  return undefined;
}

function isExtreme(goal: Criterion): goal is StatisticCriterion {
  return goal.kind === "statistic" && (goal.statistic.kind === "best" || goal.statistic.kind === "worst");
}

function isRuledOut(
  { goal: other, count, share, conditions, propose }: Need,
  goal: StatisticCriterion,
  subject: BlockInPlan,
): boolean {
  const isAboutIt = conditions.some((condition) => metricsIn(condition).includes(goal.metric));
  const isOfNone = other.kind === "share" && share <= 0; // of an open number of shots one is counted
  if (count <= 0 || isOfNone || !isAboutIt) return false;
  const among = circumstancesOf(conditions, subject.block.shots);
  return among.every((at) => !areCompatible([propose(at), keepingTo(goal, at)], at, subject.vocabulary));
}

/** That a shot is no better than the best, or no worse than the worst. */
function keepingTo({ statistic, metric, bounds }: StatisticCriterion, { hand }: Circumstances): Proposition {
  const { interval, slack } = claimOf(bounds, hand);
  const range =
    statistic.kind === "best"
      ? { low: Number.NEGATIVE_INFINITY, high: interval.high + slack }
      : { low: interval.low - slack, high: Number.POSITIVE_INFINITY };
  return { kind: "number", metric, range };
}
