/** Demands that no shot can meet together: the fewest that do it, in which circumstances, and what it follows from. */
import type { Interval } from "../../../shared/statistics/interval.ts";
import { metricsIn, type Proposition } from "../reasoning/proposition.ts";
import { WHOLE } from "../reasoning/range.ts";
import type { Relation } from "../reasoning/relation.ts";
import { isPossible, type World } from "../reasoning/solve.ts";
import type { Circumstances } from "./circumstances.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** Something that can be asked of a shot in given circumstances. */
export type Proposing = (circumstances: Circumstances) => Proposition;

export interface Conflict<T> {
  /** Taking out any one of them leaves a shot that meets the others. In the order they were given. */
  readonly demands: readonly T[];
  /** Those in which they cannot be met together; never empty. */
  readonly circumstances: readonly Circumstances[];
  readonly because: Because;
}

/** What has a part in a conclusion, in the first of its circumstances. */
export interface Because {
  readonly relations: readonly Relation[];
  /** The metrics whose plausible range has a part in it, and the end of the range that has. */
  readonly plausible: readonly { readonly metric: string; readonly range: Interval }[];
}

/** Beyond so many demands not all pairs are tried for a smaller conflict. */
const MOST_IN_PAIRS = 12;

/** A lower end that could be so many times smaller says only that there is something. */
const NEARLY_NOTHING = 10;

/** What holds of every shot, as far as these propositions are concerned. */
export function worldOf(
  propositions: readonly Proposition[],
  { hand }: Circumstances,
  vocabulary: Vocabulary,
): World {
  const metrics = new Set<string>();
  for (const proposition of propositions) metricsIn(proposition, metrics);
  return {
    relations: vocabulary.relationsAround(metrics),
    domain: (metric) => vocabulary.plausible(metric, hand),
  };
}

/** Whether some shot meets them together. */
export function areCompatible(
  propositions: readonly Proposition[],
  circumstances: Circumstances,
  vocabulary: Vocabulary,
): boolean {
  return isPossible(propositions, worldOf(propositions, circumstances, vocabulary));
}

/**
 * A conflict among demands; undefined where there is none. One question for each of the circumstances where all is well, and
 * where it is not as many as demands, or pairs of a few.
 */
export function findConflict<T>(
  demands: readonly T[],
  proposing: (demand: T) => Proposing,
  circumstances: readonly Circumstances[],
  vocabulary: Vocabulary,
): Conflict<T> | undefined {
  const asked = new Map(demands.map((demand) => [demand, proposing(demand)]));
  const conflictIn = (some: readonly T[], at: Circumstances) =>
    !areCompatible(
      some.map((demand) => (asked.get(demand) as Proposing)(at)),
      at,
      vocabulary,
    );
  const first = circumstances.find((at) => conflictIn(demands, at));
  if (first === undefined) return undefined;
  const fewest = fewestOf(demands, (some) => conflictIn(some, first));
  const propositions = fewest.map((demand) => (asked.get(demand) as Proposing)(first));
  return {
    demands: fewest,
    circumstances: circumstances.filter((at) => at === first || conflictIn(fewest, at)),
    because: becauseOf(propositions, worldOf(propositions, first, vocabulary)),
  };
}

/** A smallest part for which it still holds: one, else two, else what is left when all that can be is taken out. */
export function fewestOf<T>(all: readonly T[], holds: (some: readonly T[]) => boolean): readonly T[] {
  const single = all.find((one) => holds([one]));
  if (single !== undefined) return [single];
  if (all.length <= MOST_IN_PAIRS) {
    for (const [index, other] of all.entries()) {
      const one = all.slice(0, index).find((before) => holds([before, other]));
      if (one !== undefined) return [one, other];
    }
  }
  let left = all;
  for (const one of all) {
    const without = left.filter((other) => other !== one);
    if (holds(without)) left = without;
  }
  return left;
}

/**
 * What cannot be done without for a contradiction among these propositions. That a speed or a length is more than nothing is
 * not worth a word.
 */
export function becauseOf(propositions: readonly Proposition[], world: World): Because {
  let { relations, domain } = world;
  for (const relation of relations) {
    const without = relations.filter((other) => other !== relation);
    if (!isPossible(propositions, { relations: without, domain })) relations = without;
  }
  const metrics = new Set(relations.flatMap((relation) => relation.metrics));
  for (const proposition of propositions) metricsIn(proposition, metrics);
  const plausible: { metric: string; range: Interval }[] = [];
  for (const metric of metrics) {
    const widenTo = (range: Interval): boolean => {
      const before = domain;
      const wider = (name: string) => (name === metric ? range : before(name));
      if (isPossible(propositions, { relations, domain: wider })) return false;
      domain = wider;
      return true;
    };
    const { low, high } = domain(metric);
    const needsHigh = high < WHOLE.high && !widenTo({ low, high: WHOLE.high });
    const top = domain(metric).high;
    const needsLow = low > WHOLE.low && !widenTo({ low: WHOLE.low, high: top });
    const saysLow = needsLow && !(low > 0 && widenTo({ low: low / NEARLY_NOTHING, high: top }));
    const range = { low: saysLow ? low : WHOLE.low, high: needsHigh ? high : WHOLE.high };
    if (saysLow || needsHigh) plausible.push({ metric, range });
  }
  return { relations, plausible };
}
