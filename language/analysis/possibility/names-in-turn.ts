/** Rules for the names of a metric that no shot gets to: the first rule that is met names it. */
import type { Category, Condition, Metric } from "../../../shared/plan-model.ts";
import { type Circumstances, circumstancesOf } from "./circumstances.ts";
import { areCompatible, becauseOf, fewestOf, worldOf } from "./conflict.ts";
import { propose } from "./propose.ts";
import { since } from "./reasons.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface RuleWithoutTurn {
  /** Its place among the rules of the metric. */
  readonly place: number;
  /** The places of those before it that take every shot that meets it; none where no shot meets it at all. */
  readonly takenBy: readonly number[];
  /** What it follows from besides: `, since roll is total − carry`; may be empty. */
  readonly why: string;
}

interface Rule {
  readonly place: number;
  readonly condition: Condition;
}

/** A question for each rule. */
export function rulesWithoutTurn({ categories }: Metric, vocabulary: Vocabulary): RuleWithoutTurn[] {
  const rules = categories.filter(hasRule).map(({ condition }, place): Rule => ({ place, condition }));
  return rules.flatMap((rule) => {
    const before = rules.slice(0, rule.place);
    const among = circumstancesOf([...before, rule].map(({ condition }) => condition));
    const isTakenBy = (some: readonly Rule[]) =>
      among.every((at) => !areCompatible(left(rule, some, at, vocabulary), at, vocabulary));
    if (!isTakenBy(before)) return [];
    const fewest = isTakenBy([]) ? [] : fewestOf(before, isTakenBy);
    const at = among[0] as Circumstances;
    const propositions = left(rule, fewest, at, vocabulary);
    const because = becauseOf(propositions, worldOf(propositions, at, vocabulary));
    return [
      {
        place: rule.place,
        takenBy: fewest.map(({ place }) => place),
        why: since(because, at, { vocabulary }),
      },
    ];
  });
}

function hasRule(category: Category): category is Category & { readonly condition: Condition } {
  return category.condition !== null;
}

/** That a shot meets the rule and none of those before it. */
function left(rule: Rule, before: readonly Rule[], at: Circumstances, vocabulary: Vocabulary) {
  return [
    propose(rule.condition, true, at, vocabulary),
    ...before.map(({ condition }) => propose(condition, false, at, vocabulary)),
  ];
}
