/** Usual numbers of a player that cannot all be usual, by what holds between readings. */
import type { Amount, Hand, Usual } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { listed } from "../../criteria/wording.ts";
import type { Proposition } from "../reasoning/proposition.ts";
import { holds, isEmpty, WHOLE, widened } from "../reasoning/range.ts";
import type { Relation } from "../reasoning/relation.ts";
import { isPossible, rangeLeft, type World } from "../reasoning/solve.ts";
import type { Remark } from "../subject.ts";
import { mannerOf, placeInWords, rangeInWords, sentence } from "../words.ts";
import { isLinear, productsIn } from "./average-relations.ts";
import { becauseOf, fewestOf, worldOf } from "./conflict.ts";
import { withoutFarEnd } from "./conflict-words.ts";
import { since } from "./reasons.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** A usual number as it was written. */
export interface UsualNumber extends Usual {
  readonly amount: Amount;
  /** The last digit that is stated, as an amount: of `2.5°` a tenth of a degree. SI. */
  readonly digit: number;
}

/**
 * What an average of products may differ from the product of averages, as a share of it: the product of how much the factors
 * vary, by a tenth of themselves the one, by a fifth the other. Nobody's shots with a club vary more.
 */
const COVARIANCE = 0.02;

/** One remark on each number that does not fit to those before it. A question for each club that several are stated of. */
export function usualNumbersAtOdds(
  numbers: readonly UsualNumber[],
  hand: Hand,
  vocabulary: Vocabulary,
): Remark[] {
  const plausible = numbers.filter((number) =>
    holds(vocabulary.plausible(number.metric, hand), { low: number.value, high: number.value }),
  );
  const ofEachClub = Map.groupBy(plausible, ({ club }) => club);
  return [...ofEachClub.values()].flatMap((same) => {
    const remarks: Remark[] = [];
    let left: readonly UsualNumber[] = same;
    for (;;) {
      const found = atOdds(left, hand, vocabulary);
      if (found === undefined) return remarks;
      remarks.push(found.remark);
      left = left.filter((number) => number !== found.last);
    }
  });
}

function atOdds(numbers: readonly UsualNumber[], hand: Hand, vocabulary: Vocabulary) {
  const isImpossible = (some: readonly UsualNumber[]) =>
    !isPossible(some.map(claimOn), worldOfAverages(some, hand, vocabulary));
  if (numbers.length < 2 || !isImpossible(numbers)) return undefined;
  const fewest = fewestOf(numbers, isImpossible);
  const last = fewest.at(-1);
  return last && { last, remark: remarkOn(last, fewest, hand, vocabulary) };
}

/** What was written stands for all that is rounded to it, and an average of few shots for what is usual near it. */
function claimOn({ metric, value, digit, spread, shots }: UsualNumber): Proposition {
  const error = spread === null || shots === null ? 0 : (2 * spread) / Math.sqrt(shots);
  return { kind: "number", metric, range: widened({ low: value, high: value }, digit / 2 + error) };
}

/** What holds of averages over the same shots. Of products only where nobody's shots vary enough to matter. */
function worldOfAverages(numbers: readonly UsualNumber[], hand: Hand, vocabulary: Vocabulary): World {
  const world = worldOf(numbers.map(claimOn), { hand, club: null, level: null }, vocabulary);
  const sizeOf = (metric: string) => {
    const stated = numbers.find((number) => number.metric === metric);
    return stated === undefined ? largest(world.domain(metric)) : Math.abs(stated.value);
  };
  const relations = world.relations.flatMap((relation): Relation[] => {
    if (isLinear(relation.expression)) return [relation];
    const metric = metricOfProduct(relation);
    if (metric === undefined) return [];
    return [{ ...relation, slack: relation.slack + COVARIANCE * sizeOf(metric) }];
  });
  return { ...world, relations };
}

function largest({ low, high }: Interval): number {
  return Math.max(Math.abs(low), Math.abs(high));
}

/** The metric whose formula is a product or a quotient of two others. */
function metricOfProduct({ expression }: Relation): string | undefined {
  if (productsIn(expression).length === 0 || expression.kind !== "operation") return undefined;
  return expression.right.kind === "metric" ? expression.right.name : undefined;
}

function remarkOn(
  last: UsualNumber,
  fewest: readonly UsualNumber[],
  hand: Hand,
  vocabulary: Vocabulary,
): Remark {
  const claims = fewest.map(claimOn);
  const world = worldOfAverages(fewest, hand, vocabulary);
  const because = becauseOf(claims, world);
  const others = fewest.filter((number) => number !== last);
  const lines = listed(
    others.map(({ metric, location }) => `the usual ${metric} (${placeInWords(location, last.location)})`),
  );
  const why = since(because, { hand, club: null, level: null }, { vocabulary });
  return {
    message: `${sentence(lines)} ${others.length === 1 ? "leaves" : "leave"} ${whatIsLeft(last, others, world, hand, vocabulary)}${why}; this line says otherwise. Check the numbers, and that they are of the same shots.`,
    location: last.location,
    related: others.map(({ metric, location }) => ({ message: `the usual ${metric}`, location })),
  };
}

/** What the others leave as they are stated: `face-to-path 1° open`. */
function whatIsLeft(
  last: UsualNumber,
  others: readonly UsualNumber[],
  world: World,
  hand: Hand,
  { metrics }: Vocabulary,
): string {
  const { metric: name, amount } = last;
  const metric = metrics.get(name);
  const stated = others.map(({ metric, value }): Proposition => {
    return { kind: "number", metric, range: { low: value, high: value } };
  });
  const left = rangeLeft(name, stated, world, true);
  if (metric === undefined || isEmpty(left)) return `no such ${name}`;
  const whateverIsPlausible = rangeLeft(name, stated, { ...world, domain: () => WHOLE }, true);
  const range = withoutFarEnd(left, { low: last.value, high: last.value }, whateverIsPlausible);
  const manner = mannerOf(amount.direction === null ? [] : [amount.direction], amount.unit, hand);
  return `${name} ${rangeInWords(range, metric, manner)}`;
}
