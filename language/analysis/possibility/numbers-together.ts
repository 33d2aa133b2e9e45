/** Goals about numbers that cannot all be what is asked for. */
import { claimOf } from "../../../shared/condition.ts";
import type { Criterion, Hand } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { claimOfMovement } from "../../criteria/change/movement.ts";
import { listed } from "../../criteria/wording.ts";
import type { Proposition } from "../reasoning/proposition.ts";
import { WHOLE } from "../reasoning/range.ts";
import { isPossible, rangeLeft, type World } from "../reasoning/solve.ts";
import type { BlockInPlan } from "../subject.ts";
import { relationsOfAverages } from "./average-relations.ts";
import { nameOfChange, relationsOfChanges } from "./change-relations.ts";
import type { Circumstances } from "./circumstances.ts";
import { becauseOf, fewestOf, worldOf } from "./conflict.ts";
import { demandsOf, proposeDemand } from "./demand.ts";
import { nameOfSize, relationsOfEllipses, SIZE } from "./ellipse-relations.ts";
import type { GoalsAtOdds } from "./goals-together.ts";
import { named, since } from "./reasons.ts";

/** Averages that the relations between metrics do not leave together, and claims about one number that exclude each other. */
export function numbersAtOdds(goals: readonly Criterion[], subject: BlockInPlan): GoalsAtOdds | undefined {
  const claims = goals.filter((goal) => nameOfNumber(goal) !== undefined);
  if (!mayBeAtOdds(claims)) return undefined;
  const isImpossible = (some: readonly Criterion[]) =>
    HANDS.every((hand) => {
      const claimed = some.map((goal) => claimOn(goal, hand));
      return !isPossible(claimed, worldOfNumbers(some, claimed, hand, subject));
    });
  if (!isImpossible(claims)) return undefined;
  const fewest = fewestOf(claims, isImpossible);
  if (fewest.length < 2) return undefined;
  const hand = HANDS[0];
  const claimed = fewest.map((goal) => claimOn(goal, hand));
  const because = becauseOf(claimed, worldOfNumbers(fewest, claimed, hand, subject));
  const why = since(because, { hand, club: null, level: null }, subject);
  const lines = listed(fewest.map((goal) => named(goal, subject)));
  return { goals: fewest, why: `${lines}${why}. Change one of them.` };
}

const HANDS = ["right", "left"] as const;

function claimOn(goal: Criterion, hand: Hand): Proposition {
  return { kind: "number", metric: nameOfNumber(goal) ?? "", range: claimedBy(goal, hand) };
}

/** Two averages or changes, two sizes of ellipses, or two claims about the same number. */
function mayBeAtOdds(claims: readonly Criterion[]): boolean {
  const averages = claims.filter((goal) => goal.kind === "statistic" && goal.statistic.kind === "average");
  const several = (kind: Criterion["kind"]) => claims.filter((goal) => goal.kind === kind).length > 1;
  return (
    averages.length > 1 ||
    several("ellipse") ||
    several("change") ||
    new Set(claims.map(nameOfNumber)).size < claims.length
  );
}

/** The number that a goal is about; an average goes by the name of its metric, since averages hang together as readings do. */
function nameOfNumber(goal: Criterion): string | undefined {
  if (goal.kind === "statistic") {
    const { statistic, metric } = goal;
    if (statistic.kind === "average") return metric;
    return JSON.stringify([statistic, metric]);
  }
  if (goal.kind === "ellipse") return nameOfSize(goal);
  return goal.kind === "change" ? nameOfChange(goal) : undefined;
}

/** What holds of averages over shots that meet the requirements, and of other numbers. */
function worldOfNumbers(
  goals: readonly Criterion[],
  claimed: readonly Proposition[],
  hand: Hand,
  subject: BlockInPlan,
): World {
  const { vocabulary } = subject;
  const at: Circumstances = { hand, club: null, level: null };
  const required = demandsOf(subject)
    .filter(({ role }) => role === "require")
    .map((demand) => proposeDemand(demand, at, subject));
  const ofShots = worldOf([...claimed, ...required], at, vocabulary);
  const ofEllipses = relationsOfEllipses(goals);
  const sizes = new Set(ofEllipses.flatMap(({ metrics }) => metrics));
  const known = new Map<string, Interval>();
  const domain = (name: string): Interval => {
    if (sizes.has(name)) return SIZE;
    if (required.length === 0 || !vocabulary.metrics.has(name)) return ofShots.domain(name);
    const range = known.get(name) ?? rangeLeft(name, required, ofShots);
    known.set(name, range);
    return range;
  };
  const ofAverages = ofShots.relations.flatMap((relation) =>
    relationsOfAverages(relation, domain, vocabulary, hand),
  );
  const ofChanges = relationsOfChanges(goals, vocabulary);
  return { relations: [...ofAverages, ...ofEllipses, ...ofChanges], domain };
}

/** Where the number lies that a goal is about: of a change, what it rises by. */
function claimedBy(goal: Criterion, hand: Hand): Interval {
  if (goal.kind === "statistic" || goal.kind === "ellipse") {
    const { interval, slack } = claimOf(goal.bounds, hand);
    return { low: interval.low - slack / 4, high: interval.high + slack / 4 };
  }
  return goal.kind !== "change" ? WHOLE : claimOfMovement(goal.movement, "difference", hand).interval;
}
