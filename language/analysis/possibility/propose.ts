/** Conditions of a plan as propositions about one shot, under given circumstances. */
import { claimOf } from "../../../shared/condition.ts";
import { once } from "../../../shared/once.ts";
import type { Condition, ShotTest, WindowVariant } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { ANYTHING, all, any, type Proposition } from "../reasoning/proposition.ts";
import type { Circumstances } from "./circumstances.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** That a shot meets the condition, or where `truth` is false, that it does not. */
export function propose(
  condition: Condition,
  truth: boolean,
  circumstances: Circumstances,
  vocabulary: Vocabulary,
): Proposition {
  const test = (one: ShotTest) => proposeTest(one, truth, circumstances, vocabulary);
  return truth
    ? any(condition.anyOf.map(({ allOf }) => all(allOf.map(test))))
    : all(condition.anyOf.map(({ allOf }) => any(allOf.map(test))));
}

function proposeTest(
  test: ShotTest,
  truth: boolean,
  circumstances: Circumstances,
  vocabulary: Vocabulary,
): Proposition {
  switch (test.kind) {
    case "number": {
      const { passing, failing } = sides(test, circumstances);
      const number = (range: Interval): Proposition => ({ kind: "number", metric: test.metric, range });
      return truth ? number(passing) : any(failing.map(number));
    }
    case "category": {
      const categories = vocabulary.metrics.get(test.metric)?.categories;
      if (categories === undefined) return ANYTHING;
      const names = new Set(categories.map(({ name }) => name));
      const wanted = [...names].filter((name) => test.categories.includes(name) === truth);
      return any(wanted.map((name) => proposeName(test.metric, name, circumstances, vocabulary)));
    }
    case "window": {
      const variants = variantsFor(test.variants, circumstances);
      if (variants.length === 0) return ANYTHING;
      const isInside = test.inside === truth;
      return any(variants.map(({ condition }) => propose(condition, isInside, circumstances, vocabulary)));
    }
  }
}

/**
 * A shot that has this name meets one of the rules for it, where there are any, and none of those before that. Put together
 * once for each of the circumstances, since plans ask for the same names again and again.
 */
function proposeName(
  metric: string,
  name: string,
  circumstances: Circumstances,
  vocabulary: Vocabulary,
): Proposition {
  const { hand, club, level } = circumstances;
  const key = JSON.stringify([metric, name, hand, club, level]);
  const known = namesProposed(vocabulary);
  const before = known.get(key);
  if (before !== undefined) return before;
  if (known.size >= MOST_REMEMBERED) known.clear();
  const isNamed: Proposition = { kind: "names", metric, names: [name] };
  known.set(key, isNamed); // for rules that lead back here, which say nothing more
  const conditions = conditionsOf(metric, name, circumstances, vocabulary);
  const proposition = conditions.length === 0 ? isNamed : all([isNamed, any(conditions)]);
  known.set(key, proposition);
  return proposition;
}

/** Plans ask for few names, in few circumstances. */
const MOST_REMEMBERED = 500;

const namesProposed = once((_: Vocabulary) => new Map<string, Proposition>());

/** What it takes for each rule of a name to be the first that is met. */
function conditionsOf(
  metric: string,
  name: string,
  circumstances: Circumstances,
  vocabulary: Vocabulary,
): Proposition[] {
  const rules = vocabulary.metrics.get(metric)?.categories ?? [];
  return rules.flatMap((rule, place) => {
    if (rule.name !== name) return [];
    if (rule.condition === null) return [ANYTHING];
    const others = rules.slice(0, place).filter((before) => before.name !== name);
    return [
      all([
        propose(rule.condition, true, circumstances, vocabulary),
        ...others.flatMap(({ condition }) =>
          condition === null ? [] : [propose(condition, false, circumstances, vocabulary)],
        ),
      ]),
    ];
  });
}

/** The variants that may decide: the first that fits; where no club is known, each that is the first for some club. */
export function variantsFor(
  variants: readonly WindowVariant[],
  { club, level }: Circumstances,
): WindowVariant[] {
  const deciding: WindowVariant[] = [];
  for (const variant of variants) {
    const isForAny = variant.clubs.length === 0;
    if (variant.level !== null && variant.level !== level) continue;
    if (isForAny || club === null || variant.clubs.includes(club)) deciding.push(variant);
    if (deciding.length > 0 && (isForAny || club !== null)) break;
  }
  return deciding;
}

/**
 * The readings that pass a test and those that do not: a reading passes to within the slack of the interval. A billionth of
 * a unit lies between them, so that at a limit that `below` and `at least` share no reading does both, and none neither.
 */
function sides(test: Extract<ShotTest, { kind: "number" }>, { hand }: Circumstances) {
  const { interval, slack } = claimOf(test.bounds, hand);
  const { low, high } = interval;
  const margin = slack / 4;
  const below: Interval = { low: Number.NEGATIVE_INFINITY, high: low - slack - margin };
  const above: Interval = { low: high + slack + margin, high: Number.POSITIVE_INFINITY };
  return {
    passing: { low: low - slack + margin, high: high + slack - margin },
    failing: [
      ...(low === Number.NEGATIVE_INFINITY ? [] : [below]),
      ...(high === Number.POSITIVE_INFINITY ? [] : [above]),
    ],
  };
}
