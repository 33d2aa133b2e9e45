/** What a goal cannot do without: at least so many shots that are like this. */
import { claimOf } from "../../../shared/condition.ts";
import { unitOf } from "../../../shared/interval.ts";
import type { Condition, Criterion, StatisticCriterion, Subject } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { criticalCounts } from "../../../shared/statistics/proportion.ts";
import { writeCondition } from "../../criteria/condition.ts";
import { orderOf } from "../../criteria/statistic/compute.ts";
import { directionsIn } from "../../criteria/statistic/value.ts";
import { all, type Proposition } from "../reasoning/proposition.ts";
import { holds, WHOLE } from "../reasoning/range.ts";
import type { BlockInPlan } from "../subject.ts";
import { mannerOf, rangeInWords } from "../words.ts";
import type { Circumstances } from "./circumstances.ts";
import { isOpen, mostShots, shotsAsked } from "./goals.ts";
import { propose } from "./propose.ts";

export interface Need {
  readonly goal: Criterion;
  /** So many of the first `outOf` shots of the block, which meet its requirements besides. */
  readonly count: number;
  readonly outOf: number;
  /** The share of all shots that are like this at least, however many are hit; 0 where nothing is said of shares. */
  readonly share: number;
  readonly propose: (at: Circumstances) => Proposition;
  /** Which shots they are: `with carry at most 100 yd`. */
  readonly says: (at: Circumstances) => string;
  /** The conditions of the plan that it is made of. */
  readonly conditions: readonly Condition[];
}

export function needsOf(goal: Criterion, subject: BlockInPlan): Need[] {
  switch (goal.kind) {
    case "count": {
      const { bound, count, outOf } = goal;
      if (bound === "least") return [ofCount(goal, count, outOf ?? Number.POSITIVE_INFINITY, subject)];
      return outOf === null ? [] : [ofCount(goal, outOf - count, outOf, subject)];
    }
    case "run":
      return [ofCount({ ...goal, bound: "least" }, goal.length, mostShots(subject), subject)];
    case "share": {
      const asked = shotsAsked(subject);
      const count = isOpen(subject) ? 1 : countOfShare(goal, asked);
      const share = goal.bound === "least" ? goal.share : 1 - goal.share;
      return count === undefined ? [] : [{ ...ofCount(goal, count, mostShots(subject), subject), share }];
    }
    case "statistic":
      return ofStatistic(goal, subject);
    default:
      return [];
  }
}

const SLACK = 1e-9;

/** How many good shots a share takes: all but the bad ones it allows, where it allows "at most" so many. */
function countOfShare(
  { bound, share, confidence }: Extract<Criterion, { kind: "share" }>,
  asked: number,
): number | undefined {
  if (confidence !== null) {
    const { met } = criticalCounts(asked, share, confidence, `at ${bound}`);
    return met === undefined ? undefined : bound === "least" ? met : asked - met;
  }
  return bound === "least" ? Math.ceil(share * asked - SLACK) : asked - Math.floor(share * asked + SLACK);
}

function ofCount(
  goal: Criterion & { subject: Subject; bound: "least" | "most" },
  count: number,
  outOf: number,
  { block, vocabulary }: BlockInPlan,
): Need {
  const { subject, bound } = goal;
  const isWanted = bound === "least";
  const conditions =
    subject.kind === "meeting" ? [subject.condition] : block.targets.map(({ condition }) => condition);
  // A shot is not on target when it misses one of the targets.
  const proposing = (at: Circumstances): Proposition => {
    const parts = conditions.map((condition) => propose(condition, isWanted, at, vocabulary));
    return isWanted ? all(parts) : { kind: "any", of: parts };
  };
  const says = () => whichShots(subject, isWanted, count);
  return { goal, count, outOf, share: 0, propose: proposing, says, conditions };
}

function whichShots(subject: Subject, isWanted: boolean, count: number): string {
  const isOne = count === 1;
  if (subject.kind === "on-target")
    return isWanted ? "on target" : `that ${isOne ? "misses" : "miss"} the target`;
  const condition = writeCondition(subject.condition);
  const isWindow = /^(inside|outside) /.test(condition);
  if (isWanted) return isWindow ? condition : `with ${condition}`;
  return isWindow
    ? `that ${isOne ? "is" : "are"} not ${condition}`
    : `that ${isOne ? "does" : "do"} not have ${condition}`;
}

/** What a statistic takes: no average is above a limit without a shot above it, and no percentile without several. */
function ofStatistic(goal: StatisticCriterion, subject: BlockInPlan): Need[] {
  const { statistic, metric, bounds } = goal;
  const known = subject.vocabulary.metrics.get(metric);
  if (known === undefined || statistic.kind === "spread" || statistic.kind === "span") return [];
  const need = (count: number, ends: (claim: Interval, sign: 1 | -1) => Interval): Need => {
    const claim = ({ hand }: Circumstances) =>
      ends(claimOf(bounds, hand).interval, orderOf(known, hand, directionsIn(bounds)).sign);
    return {
      goal,
      count,
      outOf: mostShots(subject),
      share: 0,
      propose: (at) => ({ kind: "number", metric, range: claim(at) }),
      says: (at) => {
        const manner = mannerOf(directionsIn(bounds), unitOf(bounds), at.hand);
        return `with ${metric} ${rangeInWords(claim(at), known, manner)}`;
      },
      conditions: [{ anyOf: [{ allOf: [{ kind: "number", metric, bounds }] }] }],
    };
  };
  const from = ({ low }: Interval) => ({ low, high: Number.POSITIVE_INFINITY });
  const upTo = ({ high }: Interval) => ({ low: Number.NEGATIVE_INFINITY, high });
  const noFartherThan = ({ low, high }: Interval) => {
    const farthest = Math.max(Math.abs(low), Math.abs(high));
    return { low: -farthest, high: farthest };
  };
  if (statistic.kind === "best" || statistic.kind === "worst") {
    const rest = known.directions.length > 0 ? noFartherThan : statistic.kind === "best" ? upTo : from;
    const one = need(1, (claim) => claim);
    // Of the best of readings that go two ways no more is known than that no other is nearer to zero.
    if (!everyShotEnters(subject) || (rest === noFartherThan && statistic.kind === "best")) return [one];
    const every = need(shotsAsked(subject), rest);
    return isAnything(every.propose) ? [one] : [one, every];
  }
  // Where values are in the opposite order for a left-hander, a percentile stands as far from the other end.
  const { low, high } = countsOfQuantile(goal, subject);
  return [
    need(low, (claim, sign) => (sign === 1 ? from(claim) : upTo(claim))),
    need(high, (claim, sign) => (sign === 1 ? upTo(claim) : from(claim))),
  ].filter(({ propose }) => !isAnything(propose));
}

/** Whether it leaves every number free, whatever the hand. */
function isAnything(propose: Need["propose"]): boolean {
  return (["right", "left"] as const).every((hand) => {
    const proposition = propose({ hand, club: null, level: null });
    return proposition.kind === "number" && holds(proposition.range, WHOLE);
  });
}

/** Whether a number over the block is one over as many shots as are asked for. */
export function everyShotEnters(subject: BlockInPlan): boolean {
  return shotsAsked(subject) > 0 && !isOpen(subject) && subject.block.requirements.length === 0;
}

/**
 * How many shots are at least as large, and at most as large, as a quantile of type 7: it lies between the two order
 * statistics at (n − 1)·share. Only where every shot enters, which is not sure where the block requires something; and of an
 * average no more is known than that it takes one.
 */
function countsOfQuantile({ statistic, confidence }: StatisticCriterion, subject: BlockInPlan) {
  const share = statistic.kind === "percentile" ? statistic.share : statistic.kind === "median" ? 0.5 : null;
  const asked = shotsAsked(subject);
  if (share === null || !everyShotEnters(subject)) return { low: 1, high: 1 };
  if (confidence !== null) {
    const least = criticalCounts(asked, share, confidence).met;
    const most = criticalCounts(asked, share, confidence, "at most").met;
    return { low: most === undefined ? 1 : asked - most, high: least ?? 1 };
  }
  const place = (asked - 1) * share;
  return { low: asked - Math.ceil(place - SLACK), high: Math.floor(place + SLACK) + 1 };
}
