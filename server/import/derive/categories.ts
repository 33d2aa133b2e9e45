/** The names that shots have by rule, as the shape of a flight, where the data does not hold them. */
import {
  type PlayerTraits,
  questionOf,
  type Readings,
  type ShotQuestion,
} from "../../../shared/condition.ts";
import type { Category, Metric, Player } from "../../../shared/plan-model.ts";

/** A metric that is one of several names, and how shots are asked for each. */
export interface Naming {
  readonly metric: string;
  /** One list of rules for each hand the player may have, in the order of the metric. */
  readonly rulesByHand: readonly (readonly NamingRule[])[];
}

interface NamingRule {
  readonly category: string;
  readonly isMet: ShotQuestion;
}

/** The namings of a vocabulary for this player. Where the hand is not stated, a name must be right for either. */
export function namings(
  metrics: Iterable<Metric>,
  { hand, level }: Pick<Player, "hand" | "level">,
): Naming[] {
  const hands = hand === null ? (["right", "left"] as const) : [hand];
  return [...metrics].flatMap(({ name, categories }) =>
    categories.some(({ condition }) => condition !== null)
      ? [{ metric: name, rulesByHand: hands.map((hand) => rulesOf(categories, { hand, level })) }]
      : [],
  );
}

function rulesOf(categories: readonly Category[], player: PlayerTraits): NamingRule[] {
  return categories.flatMap(({ name, condition }) =>
    condition === null ? [] : [{ category: name, isMet: questionOf(condition, player) }],
  );
}

/**
 * Adds to `categories` every name that is missing there and follows from the readings, and returns the metrics that it
 * named. What the data says is never replaced. Rules may ask for other names: each round uses what is known, until one adds
 * nothing.
 */
export function deriveCategories(
  categories: Record<string, string>,
  readings: Omit<Readings, "categories">,
  namings: readonly Naming[],
): string[] {
  const derived: string[] = [];
  let missing = namings.filter(({ metric }) => !Object.hasOwn(categories, metric));
  for (let before = -1; before !== missing.length; ) {
    before = missing.length;
    missing = missing.filter(({ metric, rulesByHand }) => {
      const names = new Set(rulesByHand.map((rules) => nameBy(rules, { ...readings, categories })));
      const [name] = names;
      if (name === undefined || names.size > 1) return true;
      categories[metric] = name;
      derived.push(metric);
      return false;
    });
  }
  return derived;
}

/**
 * The name of the first rule that is met. A rule before it that cannot be judged could have been the first, so the name is
 * unknown then, unless all of those give the same name. Unknown where no rule is met.
 */
function nameBy(rules: readonly NamingRule[], readings: Readings): string | undefined {
  const possible = new Set<string>();
  for (const { category, isMet } of rules) {
    const truth = isMet(readings);
    if (truth === false) continue;
    possible.add(category);
    if (truth === true) return possible.size === 1 ? category : undefined;
    if (possible.size > 1) return undefined;
  }
  return undefined;
}
