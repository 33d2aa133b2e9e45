/** Changes that are larger than any that there can be. */
import type { ChangeCriterion, Hand, Metric } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { claimOfMovement, measureOf } from "../../criteria/change/movement.ts";
import { isWidth, titleOf } from "../../criteria/statistic/names.ts";
import { isEmpty, meet } from "../reasoning/range.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { rangeInWords, sentence } from "../words.ts";
import { calledGoal } from "./reasons.ts";

/** Undefined where some shots, before and now, show the change. */
export function changeTooLarge(goal: ChangeCriterion, subject: BlockInPlan): Remark | undefined {
  const metric = subject.vocabulary.metrics.get(goal.metric);
  if (metric === undefined) return undefined;
  const measure = measureOf(goal.movement, metric);
  const isTooLarge = (["right", "left"] as const).every((hand) => {
    const { interval, slack } = claimOfMovement(goal.movement, measure, hand);
    const plausible = subject.vocabulary.plausible(goal.metric, hand);
    const left = measure === "share" ? sharesLeft(goal, plausible) : differencesLeft(plausible);
    return isEmpty(meet(interval, { low: left.low - slack, high: left.high + slack }));
  });
  if (!isTooLarge) return undefined;
  const what = titleOf(goal.statistic, goal.metric);
  const called = calledGoal(goal, subject);
  const why =
    measure === "share"
      ? `${called} asks for a ${what} that falls by more than there is: 100 % less would leave none. Ask for less than 100 %.`
      : `no ${what} changes as much as ${called} asks for, since a plausible ${goal.metric} is ${plausibleInWords(goal, metric, subject)}. Check the number and its unit.`;
  return { message: sentence(why), location: goal.location, related: [] };
}

/** From one end of what is plausible to the other; no spread or span is wider. */
function differencesLeft({ low, high }: Interval): Interval {
  return { low: low - high, high: high - low };
}

/** What is never below zero loses no more than all of it. */
function sharesLeft({ statistic }: ChangeCriterion, { low }: Interval): Interval {
  const isNeverNegative = isWidth(statistic) || low >= 0;
  return { low: isNeverNegative ? -1 : Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
}

function plausibleInWords(
  { movement }: ChangeCriterion,
  metric: Metric,
  { vocabulary }: BlockInPlan,
): string {
  const hand: Hand = "right";
  const manner = { hand, unit: movement.amount.unit, isPlain: true };
  return rangeInWords(vocabulary.plausible(metric.name, hand), metric, manner);
}
