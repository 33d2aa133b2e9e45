/** How probable it is that shots count, where their readings may be off. */
import type { Chances, ShotChances } from "../../../language/criteria/chances.ts";
import type { PlayerTraits, Readings } from "../../../language/criteria/condition.ts";
import type { Truth } from "../../../language/criteria/verdict.ts";
import type { Metric } from "../../../shared/plan-model.ts";
import type { Shot } from "../../../shared/session-data.ts";
import { deriveCategories, namings } from "../../import/derive/categories.ts";
import { chancesOfShot, type UncertainShot, uncertainShot } from "./cells.ts";
import type { Asked } from "./counted-question.ts";
import { type ErrorsOf, totalUncertainty } from "./reading-errors.ts";
import { limitFinder, uncertainReadings } from "./uncertain-readings.ts";

export interface Circumstances {
  readonly player: PlayerTraits;
  readonly vocabulary: ReadonlyMap<string, Metric>;
  readonly errorsOf: ErrorsOf;
}

/**
 * The chances of each shot; null where no reading is uncertain, or all are far enough from their limits. The cost is that
 * of asking each shot once for each of its cells.
 */
export function chancesOf(
  asked: Asked,
  shots: readonly Shot[],
  circumstances: Circumstances,
): Chances | null {
  const { player, vocabulary, errorsOf } = circumstances;
  const limitsFor = limitFinder(asked.conditions, player, vocabulary);
  const withNames = renaming(vocabulary, player);
  const uncertain = shots.flatMap((shot, place): Worked | [] => {
    const readings = uncertainReadings(shot, limitsFor(shot), vocabulary, errorsOf);
    const question = (changed: Readings) => asked.question(withNames(changed, shot.derived));
    return readings.length === 0 ? [] : { place, shot: uncertainShot(shot, readings, question) };
  });
  return uncertain.length === 0 ? null : chances(shots.map(asked.question), uncertain);
}

/** Gives a shot the names that follow from its readings, in place of those that were computed before. */
function renaming(vocabulary: ReadonlyMap<string, Metric>, player: PlayerTraits) {
  const rules = namings(vocabulary.values(), player);
  const isName = new Set(rules.map(({ metric }) => metric));
  return (shot: Readings, derived: readonly string[]): Readings => {
    const names = derived.filter((metric) => isName.has(metric));
    if (names.length === 0) return shot;
    const categories = { ...shot.categories };
    for (const name of names) delete categories[name];
    deriveCategories(categories, shot, rules);
    return { ...shot, categories };
  };
}

/** A shot by its place. */
interface Worked {
  readonly place: number;
  readonly shot: UncertainShot;
}

/** What is remembered of so many shots at most, for all shared errors that were tried. */
const MOST_REMEMBERED = 200;

/** @param known the answers of all shots; those of the uncertain ones do not count */
function chances(known: readonly Truth[], uncertain: readonly Worked[]): Chances {
  const readings = uncertain.flatMap(({ shot }) => shot.readings);
  const sources = [...new Set(readings.flatMap(({ errors }) => [...errors.shared.keys()]))].sort();
  const prepared = uncertain.map(({ place, shot }) => ({
    place,
    shot,
    values: shot.readings.map(({ value }) => value),
    randoms: shot.readings.map(({ errors }) => errors.random),
    totals: shot.readings.map(({ errors }) => totalUncertainty(errors)),
    slopes: shot.readings.map(({ errors }) => sources.map((source) => errors.shared.get(source) ?? 0)),
  }));
  const certain = known.map((truth) => Number(truth === true));
  const possible = known.map((truth) => Number(truth !== false));

  /** @param errors those that all shots share; null where they are not known and added to the others */
  const withUncertain = (errors: readonly number[] | null): ShotChances => {
    const all = { certain: [...certain], possible: [...possible] };
    for (const { place, shot, values, randoms, totals, slopes } of prepared) {
      const chances =
        errors === null
          ? chancesOfShot(shot, values, totals)
          : chancesOfShot(shot, without(errors, values, slopes), randoms);
      all.certain[place] = chances.certain;
      all.possible[place] = chances.possible;
    }
    return all;
  };
  // Several goals, and both ends of a doubt, ask with the same errors.
  const given = new Map<string, ShotChances>();
  let overall: ShotChances | undefined;
  return {
    ratios: sources.map((_, index) =>
      prepared
        .flatMap(({ slopes, randoms }) =>
          slopes.map((slope, place) => ratio(slope[index] ?? 0, randoms[place] ?? 0)),
        )
        .reduce((largest, each) => Math.max(largest, each), 0),
    ),
    given: (errors) => {
      if (uncertain.length > MOST_REMEMBERED) return withUncertain(errors);
      const key = errors.join(" ");
      const before = given.get(key) ?? withUncertain(errors);
      given.set(key, before);
      return before;
    },
    overall: () => {
      overall ??= withUncertain(null);
      return overall;
    },
  };
}

/** The values without the errors that all shots share. */
function without(
  errors: readonly number[],
  values: readonly number[],
  slopes: readonly (readonly number[])[],
): number[] {
  return values.map((value, place) => {
    let centre = value;
    for (const [index, error] of errors.entries()) centre -= error * (slopes[place]?.[index] ?? 0);
    return centre;
  });
}

function ratio(slope: number, random: number): number {
  return slope === 0 ? 0 : Math.abs(slope) / random;
}
