/** Spreads and spans that no shots can exceed, or reach: what the block requires lies closer together than that. */
import { claimOf } from "../../../shared/condition.ts";
import { unitOf } from "../../../shared/interval.ts";
import type { Criterion, StatisticCriterion } from "../../../shared/plan-model.ts";
import { isWidth } from "../../criteria/statistic/names.ts";
import { listed } from "../../criteria/wording.ts";
import { join, WHOLE } from "../reasoning/range.ts";
import { rangeLeft } from "../reasoning/solve.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { rangeInWords, sentence } from "../words.ts";
import { circumstancesOf } from "./circumstances.ts";
import { fewestOf, worldOf } from "./conflict.ts";
import { type Demand, proposeDemand } from "./demand.ts";
import { calledGoal, isByOwnLines, named, relatedLines } from "./reasons.ts";

/** No standard deviation is larger, as a share of the range that values lie in: that of two at its ends. */
const LARGEST_SPREAD = Math.SQRT1_2;

/** Ranges are widened by less than this where they are narrowed by limits. */
const ROUNDING = 1e-6;

/**
 * A width that cannot be exceeded. Undefined where the goal is about none, or can be missed.
 *
 * @param demands what shots must meet to enter the number
 */
export function idleWidth(
  goal: Criterion,
  demands: readonly Demand[],
  subject: BlockInPlan,
): Remark | undefined {
  if (!isAboutWidth(goal) || goal.confidence !== null) return undefined;
  const { interval: claim } = claimOf(goal.bounds, "right");
  const isIdle = (some: readonly Demand[]) =>
    claim.low <= 0 && widestLeft(goal, some, subject) <= claim.high * (1 + ROUNDING);
  // That no plausible shots exceed it is no reason against it: it may be there for readings gone wrong.
  if (!isIdle(demands) || isIdle([])) return undefined;
  const lines = fewestOf(demands, isIdle);
  if (isByOwnLines(goal, lines, subject)) return undefined;
  return {
    message: sentence(
      `${calledGoal(goal, subject)} cannot be missed: ${whatLines(goal, lines, subject)}, and shots so close together never scatter more. Ask for something stricter, or take it out.`,
    ),
    location: goal.location,
    related: relatedLines(lines),
  };
}

/**
 * A width that is never reached, and the lines that rule it out. Undefined where the goal is about none, or can be met; no
 * shots that scatter less show that the player's do more, so that a confidence changes nothing.
 *
 * @param demands what shots must meet to enter the number
 */
export function widthOutOfReach(
  goal: Criterion,
  demands: readonly Demand[],
  subject: BlockInPlan,
): { readonly against: readonly Demand[]; readonly remark: Remark } | undefined {
  if (!isAboutWidth(goal)) return undefined;
  const { interval: claim, slack } = claimOf(goal.bounds, "right");
  const isOutOfReach = (some: readonly Demand[]) =>
    claim.low - slack > widestLeft(goal, some, subject) * (1 + ROUNDING);
  if (!isOutOfReach(demands)) return undefined;
  const lines = isOutOfReach([]) ? [] : fewestOf(demands, isOutOfReach);
  const what =
    lines.length === 0
      ? `no plausible shots scatter so much. Check the number and its unit`
      : `${whatLines(goal, lines, subject)}, and shots so close together never scatter so much. Change one of them`;
  return {
    against: lines,
    remark: {
      message: sentence(`${calledGoal(goal, subject)} cannot be met: ${what}.`),
      location: goal.location,
      related: relatedLines(lines),
    },
  };
}

function isAboutWidth(goal: Criterion): goal is StatisticCriterion {
  return goal.kind === "statistic" && isWidth(goal.statistic);
}

/** No spread or span of shots that meet these is larger. */
function widestLeft(
  { statistic, metric }: StatisticCriterion,
  demands: readonly Demand[],
  subject: BlockInPlan,
) {
  const { low, high } = readingsLeft(metric, demands, subject);
  return (high - low) * (statistic.kind === "spread" ? LARGEST_SPREAD : 1);
}

/** `line 5 (`require carry between 145 yd and 150 yd`) leaves carry 145 yd to 150 yd` */
function whatLines(
  { metric: name, bounds }: StatisticCriterion,
  lines: readonly Demand[],
  subject: BlockInPlan,
) {
  const all = listed(lines.map((other) => named(other, subject)));
  const leave = `${all} ${lines.length === 1 ? "leaves" : "leave"} ${name}`;
  const metric = subject.vocabulary.metrics.get(name);
  if (metric === undefined) return leave;
  const manner = { hand: "right" as const, unit: unitOf(bounds), isPlain: true };
  return `${leave} ${rangeInWords(readingsLeft(name, lines, subject), metric, manner)}`;
}

/** Where readings of a metric lie, whoever hits and with whichever club. */
function readingsLeft(metric: string, demands: readonly Demand[], subject: BlockInPlan) {
  const { block, vocabulary } = subject;
  const among = circumstancesOf(
    demands.map(({ condition }) => condition),
    block.shots,
  );
  return among
    .map((at) => {
      const propositions = demands.map((demand) => proposeDemand(demand, at, subject));
      const world = worldOf([...propositions, { kind: "number", metric, range: WHOLE }], at, vocabulary);
      return rangeLeft(metric, propositions, world);
    })
    .reduce(join);
}
