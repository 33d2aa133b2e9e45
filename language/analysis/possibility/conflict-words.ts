/** Conflicts in a coach's words. */
import { claimOf } from "../../../shared/condition.ts";
import { unitOf } from "../../../shared/interval.ts";
import type { Condition, ShotTest } from "../../../shared/plan-model.ts";
import { writeBounds } from "../../../shared/quantity.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { directionsIn } from "../../criteria/statistic/value.ts";
import { listed } from "../../criteria/wording.ts";
import { UNREAD } from "../reasoning/geometry.ts";
import { isEmpty, meet, WHOLE } from "../reasoning/range.ts";
import { rangeLeft } from "../reasoning/solve.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { code, mannerOf, rangeInWords, sentence } from "../words.ts";
import type { BlockConflict } from "./block-conflicts.ts";
import type { Circumstances } from "./circumstances.ts";
import { worldOf } from "./conflict.ts";
import { type Demand, proposeDemand } from "./demand.ts";
import { propose, variantsFor } from "./propose.ts";
import { byRules, forWhom, named, relatedLines, since } from "./reasons.ts";

/**
 * What a conflict among the demands of a block is reported as.
 *
 * @param which shots can do all that is asked, nevertheless
 */
export function conflictRemark(conflict: BlockConflict, subject: BlockInPlan, which = "no shot"): Remark {
  const { demands, culprit } = conflict;
  const others = demands.filter((demand) => demand !== culprit);
  return {
    message: sentence(forWhom(conflict) + whatIsWrong(conflict, others, subject, which)),
    location: culprit.location,
    related: relatedLines(others),
  };
}

function whatIsWrong(
  conflict: BlockConflict,
  others: readonly Demand[],
  subject: BlockInPlan,
  which: string,
): string {
  const { culprit } = conflict;
  const why =
    since(conflict.because, conflict.circumstances[0], subject) +
    byRules(
      conflict.demands.map(({ condition }) => condition),
      subject,
    );
  const line = subject.isOwn(culprit.location) ? "this line" : named(culprit, subject);
  if (others.length === 0) {
    return culprit.role === "leave out"
      ? `${line} leaves out every shot${why}. Narrow it, or take it out.`
      : `${which} can do what ${line} asks for${why}. Check the numbers and their units.`;
  }
  const all = listed(others.map((other) => named(other, subject)));
  if (culprit.role === "leave out") {
    return `${line} leaves out every shot that does what ${all} ${others.length === 1 ? "asks" : "ask"} for${why}. Narrow one of them.`;
  }
  const left = whatIsLeft(conflict, others, subject);
  if (left !== undefined && why === "" && others.length === 1) {
    return `${line} asks for ${left.metric} ${left.asked}, which ${all} rules out. No shot can do both: change one of them${alternative(culprit, others)}.`;
  }
  if (left !== undefined) {
    const leave = others.length === 1 ? "leaves" : "leave";
    return `${all} ${leave} ${left.metric} ${left.range}${why}; ${line} asks for ${left.asked}. ${sentence(which)} can do it all: change one of them.`;
  }
  return `${which} can do what ${line} asks for together with ${all}${why}. Change one of them${alternative(culprit, others)}.`;
}

/** Two targets on the same thing were perhaps meant as alternatives. */
function alternative(culprit: Demand, others: readonly Demand[]): string {
  const areTargets = [culprit, ...others].every(({ role }) => role === "target");
  return areTargets ? `, or write them as one target with ${code("or")} if either will do` : "";
}

/** What the other demands leave for the metric that the culprit asks too much of. */
function whatIsLeft(
  { culprit, circumstances }: BlockConflict,
  others: readonly Demand[],
  subject: BlockInPlan,
) {
  const at = circumstances[0] as Circumstances;
  const { vocabulary } = subject;
  const propositions = others.map((demand) => proposeDemand(demand, at, subject));
  for (const test of numberTestsOf(culprit.condition, at)) {
    const metric = vocabulary.metrics.get(test.metric);
    if (metric === undefined || !culprit.truth) continue;
    const asked: (typeof propositions)[number] = propose(
      { anyOf: [{ allOf: [test] }] },
      true,
      at,
      vocabulary,
    );
    const world = worldOf([...propositions, asked], at, vocabulary);
    const left = rangeLeft(test.metric, propositions, world, true);
    const { interval, slack } = claimOf(test.bounds, at.hand);
    const claim = { low: interval.low - slack, high: interval.high + slack };
    if (isEmpty(left) || !isEmpty(meet(left, claim))) continue;
    const domain = (name: string) => UNREAD.get(name) ?? WHOLE;
    const stated = rangeLeft(test.metric, propositions, { ...world, domain }, true);
    const manner = mannerOf(directionsIn(test.bounds), unitOf(test.bounds), at.hand);
    return {
      metric: test.metric,
      range: rangeInWords(withoutFarEnd(left, claim, stated), metric, manner),
      asked: writeBounds(test.bounds),
    };
  }
  return undefined;
}

/**
 * What is left, without an end on the far side of the claim that is there only because nothing farther is plausible: what
 * matters is how near it comes.
 */
export function withoutFarEnd(left: Interval, claim: Interval, whateverIsPlausible: Interval): Interval {
  const isBelow = left.high < claim.low;
  const [end, stated] = isBelow ? [left.low, whateverIsPlausible.low] : [left.high, whateverIsPlausible.high];
  if (Math.abs(end - stated) <= Math.abs(end) * ROUNDING) return left;
  return isBelow
    ? { low: Number.NEGATIVE_INFINITY, high: left.high }
    : { low: left.low, high: Number.POSITIVE_INFINITY };
}

/** Ranges are rounded outwards by less. */
const ROUNDING = 1e-9;

/** The numbers that a condition asks for without an alternative, those of the windows it names among them. */
function numberTestsOf({ anyOf }: Condition, at: Circumstances): Extract<ShotTest, { kind: "number" }>[] {
  const [only, another] = anyOf;
  if (only === undefined || another !== undefined) return [];
  return only.allOf.flatMap((test) => {
    if (test.kind === "number") return [test];
    if (test.kind !== "window" || !test.inside) return [];
    const [variant, other] = variantsFor(test.variants, at);
    return variant === undefined || other !== undefined ? [] : numberTestsOf(variant.condition, at);
  });
}
