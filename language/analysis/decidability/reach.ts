/**
 * Which verdicts on a player's ability a number of shots can lead to at all. Asked of the methods that give the verdicts,
 * with the shots that speak most clearly for and against what is claimed.
 */
import { claimOf } from "../../../shared/condition.ts";
import { onceFor } from "../../../shared/once.ts";
import type {
  ChangeCriterion,
  Criterion,
  EllipseCriterion,
  ShareCriterion,
  StatisticCriterion,
} from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { shareVerdict } from "../../../shared/statistics/proportion.ts";
import { rankSumLimit } from "../../../shared/statistics/rank-sum.ts";
import { type Decision, type LimitsAt, verdictByLimits } from "../../../shared/statistics/verdict.ts";
import { areaMethod } from "../../criteria/ellipse/ability.ts";
import { orderOf } from "../../criteria/statistic/compute.ts";
import { methodFor } from "../../criteria/statistic/methods/methods.ts";
import { directionsIn } from "../../criteria/statistic/value.ts";
import type { Vocabulary } from "../possibility/vocabulary.ts";

/** A sentence about ability, whichever confidence it was written with. */
export type AbilityGoal = Extract<Criterion, { confidence: number | null }>;

/** How many shots there are; of a change, how many the baseline has. */
export interface Counts {
  readonly shots: number;
  readonly baseline: number;
}

/** The decisions that some result leads to; undefined for a goal that is not judged as ability. */
export function decisionsInReach(
  goal: AbilityGoal,
  counts: Counts,
  confidence: number,
  vocabulary: Vocabulary,
): ReadonlySet<Decision> | undefined {
  const { id, text, location, ...claim } = goal;
  const question = JSON.stringify([claim, counts, confidence]);
  return reached(question, () => findOut(goal, counts, confidence, vocabulary));
}

const reached = onceFor<ReadonlySet<Decision> | undefined>();

function findOut(
  goal: AbilityGoal,
  counts: Counts,
  confidence: number,
  vocabulary: Vocabulary,
): ReadonlySet<Decision> | undefined {
  switch (goal.kind) {
    case "share":
      return ofShare(goal, counts, confidence);
    case "statistic":
      return ofStatistic(goal, counts, confidence, vocabulary);
    case "ellipse":
      return ofEllipse(goal, counts, confidence);
    case "change":
      return ofChange(goal, counts, confidence);
  }
}

/** Nothing but hits, and none. */
function ofShare({ share, bound }: ShareCriterion, { shots }: Counts, confidence: number): Set<Decision> {
  return new Set([0, shots].map((hits) => shareVerdict(hits, shots, share, confidence, `at ${bound}`)));
}

/** More than any claim is wide. */
const FAR = 1e12;

/** All shots alike, in the claim or on one side of it; and half of them here and half there. */
function ofStatistic(
  { statistic, metric: name, bounds }: StatisticCriterion,
  { shots }: Counts,
  confidence: number,
  vocabulary: Vocabulary,
): Set<Decision> | undefined {
  const metric = vocabulary.metrics.get(name);
  if (metric === undefined) return undefined;
  // What holds for one hand holds for the other, mirrored.
  const { interval: claim, slack } = claimOf(bounds, "right");
  const order = orderOf(metric, "right", directionsIn(bounds));
  const inside = insideOf(claim);
  const limitsOf = (values: readonly number[]) =>
    methodFor(statistic, values, null, order, () => "")?.limitsAt;
  const ofSizeOne = limitsOf(samples(shots, 0, 2))?.(confidence);
  const alike = [inside, FAR, -FAR].map((value) => samples(shots, value, value));
  const apart = sizesFor(claim, ofSizeOne).map((size) => samples(shots, 0, 2 * size));
  const decisions = new Set<Decision>();
  for (const values of [...alike, ...apart]) {
    const limitsAt = limitsOf(values);
    if (limitsAt === undefined) return undefined;
    decisions.add(verdictByLimits(limitsAt, claim, confidence, slack));
  }
  return decisions;
}

function samples(shots: number, first: number, second: number): number[] {
  return Array.from({ length: shots }, (_, index) => (index < shots / 2 ? first : second));
}

/** A number that is claimed. */
function insideOf({ low, high }: Interval): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return (low + high) / 2;
  if (Number.isFinite(low)) return low + 1;
  return Number.isFinite(high) ? high - 1 : 0;
}

/**
 * One far beyond, and of a range the size in the middle of those whose limits both lie inside, if there are any.
 *
 * @param ofSizeOne the limits of a size of 1, to which those of any size are in proportion
 */
function sizesFor({ low, high }: Interval, ofSizeOne: Interval | undefined): number[] {
  if (!(low > 0 && Number.isFinite(high) && ofSizeOne !== undefined && ofSizeOne.low > 0)) return [FAR];
  return [Math.sqrt((low / ofSizeOne.low) * (high / ofSizeOne.high)), FAR];
}

function ofEllipse(
  { measure, bounds }: EllipseCriterion,
  { shots }: Counts,
  confidence: number,
): Set<Decision> | undefined {
  if (measure !== "area") return undefined; // axes have no reading as ability
  const { interval: claim, slack } = claimOf(bounds, "right");
  const columns = [samples(shots, 0, 0), samples(shots, 0, 0)];
  const limitsOf = (area: number) => areaMethod(area, columns).limitsAt;
  const sizes = [0, ...sizesFor(claim, limitsOf(1)(confidence))];
  return new Set(sizes.map((area) => verdictByLimits(limitsOf(area), claim, confidence, slack)));
}

/** Two shots of each block show a change of an average or a spread; a median is judged by ranks. */
function ofChange(
  { statistic }: ChangeCriterion,
  counts: Counts,
  confidence: number,
): Set<Decision> | undefined {
  const { shots, baseline } = counts;
  const limitsAt: LimitsAt | undefined =
    statistic.kind === "average" || statistic.kind === "spread"
      ? () => (shots >= 2 && baseline >= 2 ? NO_DOUBT : undefined)
      : statistic.kind === "median"
        ? (level) => (rankSumLimit(baseline, shots, level) === undefined ? undefined : NO_DOUBT)
        : undefined;
  if (limitsAt === undefined) return undefined;
  const decide = (claim: Interval) => verdictByLimits(limitsAt, claim, confidence, 0);
  return new Set([
    decide({ low: -1, high: Number.POSITIVE_INFINITY }),
    decide({ low: 1, high: Number.POSITIVE_INFINITY }),
  ]);
}

const NO_DOUBT: Interval = { low: 0, high: 0 };
