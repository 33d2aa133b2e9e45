/** An average or a spread that cannot be what is asked for when so many shots lie on one side, or so far apart. */
import { claimOf } from "../../../shared/condition.ts";
import { unitOf } from "../../../shared/interval.ts";
import type { Criterion, Hand, StatisticCriterion } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { metricsIn } from "../../criteria/condition.ts";
import { titleOf } from "../../criteria/statistic/names.ts";
import { directionsIn } from "../../criteria/statistic/value.ts";
import { listed } from "../../criteria/wording.ts";
import { isEmpty, join, meet, WHOLE } from "../reasoning/range.ts";
import { rangeLeft } from "../reasoning/solve.ts";
import type { BlockInPlan } from "../subject.ts";
import { mannerOf, rangeInWords } from "../words.ts";
import { circumstancesOf } from "./circumstances.ts";
import { worldOf } from "./conflict.ts";
import { shotsAsked } from "./goals.ts";
import type { GoalsAtOdds } from "./goals-together.ts";
import { everyShotEnters, needsOf } from "./need.ts";
import { named, since } from "./reasons.ts";

/** Where the number lies, whatever the other shots are like. */
interface Left {
  readonly by: readonly Criterion[];
  readonly range: Interval;
  /** What is plausible of the other shots, where it hangs on that. */
  readonly plausible?: Interval;
}

/** More goals of one block are not held against each other. */
const MOST_GOALS = 16;

/** Only where every shot enters the number, so that it is known of how many it is. A question for each two goals. */
export function momentsAtOdds(goals: readonly Criterion[], subject: BlockInPlan): GoalsAtOdds | undefined {
  if (!everyShotEnters(subject) || goals.length > MOST_GOALS) return undefined;
  for (const goal of goals) {
    if (goal.kind !== "statistic" || goal.confidence !== null) continue;
    const others = goals.filter((other) => other !== goal);
    const [first, ...more] = HANDS.map((hand) => excludedBy(goal, others, hand, subject));
    if (first !== undefined && !more.includes(undefined)) {
      return { goals: [...first.by, goal], why: inWords(first, goal, subject) };
    }
  }
  return undefined;
}

const HANDS = ["right", "left"] as const;

function excludedBy(
  goal: StatisticCriterion,
  others: readonly Criterion[],
  hand: Hand,
  subject: BlockInPlan,
): Left | undefined {
  const { kind } = goal.statistic;
  const left = kind === "average" ? averagesLeft : kind === "spread" ? spreadsLeft : undefined;
  const { interval, slack } = claimOf(goal.bounds, hand);
  const claim = { low: interval.low - slack, high: interval.high + slack };
  return left?.(goal.metric, others, hand, subject).find(({ range }) => isEmpty(meet(range, claim)));
}

/** So many shots whose readings lie in a range. */
interface Some {
  readonly goal: Criterion;
  readonly count: number;
  readonly range: Interval;
}

/** Of goals that look at these readings themselves: where they ask for others, these may be missing. */
function shotsWhere(metric: string, goals: readonly Criterion[], hand: Hand, subject: BlockInPlan): Some[] {
  const { block, vocabulary } = subject;
  return goals
    .flatMap((goal) => needsOf(goal, subject))
    .filter(({ count, conditions }) => count > 0 && conditions.some((one) => metricsIn(one).includes(metric)))
    .map(({ goal, count, conditions, propose }) => {
      const among = circumstancesOf(conditions, block.shots).map((at) => ({ ...at, hand }));
      const ranges = among.map((at) => {
        const world = worldOf([propose(at), { kind: "number", metric, range: WHOLE }], at, vocabulary);
        return rangeLeft(metric, [propose(at)], world);
      });
      return { goal, count, range: ranges.reduce(join) };
    });
}

/** With some shots in a range and all others at an end of what is plausible. */
function averagesLeft(metric: string, goals: readonly Criterion[], hand: Hand, subject: BlockInPlan): Left[] {
  const asked = shotsAsked(subject);
  const plausible = subject.vocabulary.plausible(metric, hand);
  return shotsWhere(metric, goals, hand, subject).map(({ goal, count, range }) => {
    const others = Math.max(0, asked - count);
    const mean = (some: number, other: number) =>
      others === 0 ? some : ((asked - others) * some + others * other) / asked;
    return {
      by: [goal],
      range: { low: mean(range.low, plausible.low), high: mean(range.high, plausible.high) },
      ...(others === 0 ? {} : { plausible }),
    };
  });
}

/** With some shots at least so far above others; what it is made of besides only adds to it. */
function spreadsLeft(metric: string, goals: readonly Criterion[], hand: Hand, subject: BlockInPlan): Left[] {
  const asked = shotsAsked(subject);
  const apart = (one: number, other: number, gap: number): Interval => ({
    low: gap > 0 && asked > 1 ? gap * Math.sqrt((one * other) / (one + other) / (asked - 1)) : 0,
    high: Number.POSITIVE_INFINITY,
  });
  const some = shotsWhere(metric, goals, hand, subject);
  const pairs = some.flatMap((upper) =>
    some.map((lower) => ({
      by: [upper.goal, lower.goal],
      range: apart(upper.count, lower.count, upper.range.low - lower.range.high),
    })),
  );
  const spans = goals.flatMap((goal) =>
    goal.kind === "statistic" && goal.statistic.kind === "span" && goal.metric === metric
      ? [{ by: [goal], range: apart(1, 1, claimOf(goal.bounds, hand).interval.low) }]
      : [],
  );
  return [...pairs, ...spans];
}

function inWords({ by, range, plausible }: Left, goal: StatisticCriterion, subject: BlockInPlan): string {
  const { statistic, metric: name, bounds } = goal;
  const [hand] = HANDS;
  const goals = [...new Set(by)];
  const lines = `${listed(goals.map((line) => named(line, subject)))} ${goals.length === 1 ? "leaves" : "leave"}`;
  const claim = claimOf(bounds, hand).interval;
  const nearEnd = (of: Interval): Interval =>
    range.low > claim.high
      ? { low: of.low, high: Number.POSITIVE_INFINITY }
      : { low: Number.NEGATIVE_INFINITY, high: of.high };
  const metric = subject.vocabulary.metrics.get(name);
  const manner = mannerOf(directionsIn(bounds), unitOf(bounds), hand);
  const shown = statistic.kind === "spread" && metric !== undefined ? { ...metric, directions: [] } : metric;
  const left = shown === undefined ? "" : ` ${rangeInWords(nearEnd(range), shown, manner)}`;
  const reason = {
    relations: [],
    plausible: plausible === undefined ? [] : [{ metric: name, range: nearEnd(plausible) }],
  };
  const why = since(reason, { hand, club: null, level: null }, subject);
  return `${lines} the ${titleOf(statistic, name)}${left}${why}, which is not what ${named(goal, subject)} asks for. Change one of them.`;
}
