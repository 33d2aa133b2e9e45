/** Spreads and spans that no shots can exceed, since what the block requires lies closer together than that. */
import { claimOf } from "../../../shared/condition.ts";
import { unitOf } from "../../../shared/interval.ts";
import type { Criterion } from "../../../shared/plan-model.ts";
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
 * Undefined where the goal is about no width, or can be missed.
 *
 * @param demands what shots must meet to enter the number
 */
export function idleWidth(
  goal: Criterion,
  demands: readonly Demand[],
  subject: BlockInPlan,
): Remark | undefined {
  if (goal.kind !== "statistic" || goal.confidence !== null) return undefined;
  const { kind } = goal.statistic;
  if (kind !== "spread" && kind !== "span") return undefined;
  const { interval: claim } = claimOf(goal.bounds, "right");
  const share = kind === "spread" ? LARGEST_SPREAD : 1;
  const isIdle = (some: readonly Demand[]) => {
    const { low, high } = readingsLeft(goal.metric, some, subject);
    return claim.low <= 0 && (high - low) * share <= claim.high * (1 + ROUNDING);
  };
  // That no plausible shots exceed it is no reason against it: it may be there for readings gone wrong.
  if (!isIdle(demands) || isIdle([])) return undefined;
  const lines = fewestOf(demands, isIdle);
  const metric = subject.vocabulary.metrics.get(goal.metric);
  if (metric === undefined || isByOwnLines(goal, lines, subject)) return undefined;
  const manner = { hand: "right" as const, unit: unitOf(goal.bounds), isPlain: true };
  const left = rangeInWords(readingsLeft(goal.metric, lines, subject), metric, manner);
  const all = listed(lines.map((other) => named(other, subject)));
  return {
    message: sentence(
      `${calledGoal(goal, subject)} cannot be missed: ${all} ${lines.length === 1 ? "leaves" : "leave"} ${goal.metric} ${left}, and shots so close together never scatter more. Ask for something stricter, or take it out.`,
    ),
    location: goal.location,
    related: relatedLines(lines),
  };
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
