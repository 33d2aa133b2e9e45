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
import { type BlockInPlan, inOrder } from "../subject.ts";
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

/** No standard deviation is larger, as a share of the range that values lie in; ranges are rounded outwards by far less. */
const LARGEST_SPREAD = Math.SQRT1_2 * (1 + 1e-9);

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

/** Goals that every shot has to keep to: the one with the lowest upper end, and the one with the highest lower end. */
function tightest(some: readonly Some[], asked: number): { readonly low?: Some; readonly high?: Some } {
  const every = some.filter(({ count }) => count >= asked);
  const low = every.reduce<Some | undefined>(
    (best, one) => (one.range.low > (best?.range.low ?? Number.NEGATIVE_INFINITY) ? one : best),
    undefined,
  );
  const high = every.reduce<Some | undefined>(
    (best, one) => (one.range.high < (best?.range.high ?? Number.POSITIVE_INFINITY) ? one : best),
    undefined,
  );
  return { ...(low && { low }), ...(high && { high }) };
}

/** With some shots in a range and all others at an end of what is plausible, or of what another goal leaves of every shot. */
function averagesLeft(metric: string, goals: readonly Criterion[], hand: Hand, subject: BlockInPlan): Left[] {
  const asked = shotsAsked(subject);
  const plausible = subject.vocabulary.plausible(metric, hand);
  const some = shotsWhere(metric, goals, hand, subject);
  const mean = (count: number, one: number, other: number) =>
    count >= asked ? one : (count * one + (asked - count) * other) / asked;
  const alone = some.map(({ goal, count, range }) => ({
    by: [goal],
    range: { low: mean(count, range.low, plausible.low), high: mean(count, range.high, plausible.high) },
    ...(count >= asked ? {} : { plausible }),
  }));
  const { low, high } = tightest(some, asked);
  const beside = some.flatMap(({ goal, count, range }): Left[] => [
    ...(high ? [{ by: [goal, high.goal], range: upTo(mean(count, range.high, high.range.high)) }] : []),
    ...(low ? [{ by: [goal, low.goal], range: from(mean(count, range.low, low.range.low)) }] : []),
  ]);
  return [...alone, ...beside];
}

function from(low: number): Interval {
  return { low, high: Number.POSITIVE_INFINITY };
}

function upTo(high: number): Interval {
  return { low: Number.NEGATIVE_INFINITY, high };
}

/**
 * With some shots at least so far above others, what it is made of besides only adds to it; with all of them in a range it
 * is no larger than that of two at its ends.
 */
function spreadsLeft(metric: string, goals: readonly Criterion[], hand: Hand, subject: BlockInPlan): Left[] {
  const asked = shotsAsked(subject);
  const apart = (one: number, other: number, gap: number): Interval =>
    from(gap > 0 && asked > 1 ? gap * Math.sqrt((one * other) / (one + other) / (asked - 1)) : 0);
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
  const { low, high } = tightest(some, asked);
  const width = low && high && Math.max(0, high.range.high - low.range.low);
  const within =
    width === undefined
      ? []
      : [{ by: [low, high].flatMap((end) => end?.goal ?? []), range: upTo(width * LARGEST_SPREAD) }];
  return [...pairs, ...spans, ...within];
}

function inWords({ by, range, plausible }: Left, goal: StatisticCriterion, subject: BlockInPlan): string {
  const { statistic, metric: name, bounds } = goal;
  const [hand] = HANDS;
  const goals = inOrder([...new Set(by)], subject);
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
