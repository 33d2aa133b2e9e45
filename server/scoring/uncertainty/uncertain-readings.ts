/** Which readings of a shot are so near a limit that their accuracy matters. */
import { type PlayerTraits, reading } from "../../../language/criteria/condition.ts";
import { type Limits, limitsIn } from "../../../language/criteria/limits.ts";
import type { Condition, Metric } from "../../../shared/plan-model.ts";
import type { Shot } from "../../../shared/session-data.ts";
import type { UncertainReading } from "./cells.ts";
import type { ErrorsOf, ReadingErrors } from "./reading-errors.ts";

/** Finds the limits that a shot is held against: worked out once for each club, and for shots whose names were computed. */
export function limitFinder(
  conditions: readonly Condition[],
  player: PlayerTraits,
  vocabulary: ReadonlyMap<string, Metric>,
): (shot: Shot) => Limits {
  const known = new Map<string, Limits>();
  return (shot) => {
    const names = shot.derived.filter((metric) => (vocabulary.get(metric)?.categories.length ?? 0) > 0);
    const key = JSON.stringify([shot.club, names]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const computed = (metric: string) => (names.includes(metric) ? vocabulary.get(metric) : undefined);
    const limits: Limits = new Map();
    for (const condition of conditions) {
      for (const [metric, found] of limitsIn(condition, shot.club, player, computed)) {
        limits.set(metric, new Set([...(limits.get(metric) ?? []), ...found]));
      }
    }
    known.set(key, limits);
    return limits;
  };
}

/** A reading so many standard deviations away from a limit does not come to lie on its other side. */
const FAR = 7;

/** The readings of a shot that may come to lie on the other side of a limit. */
export function uncertainReadings(
  shot: Shot,
  limits: Limits,
  vocabulary: ReadonlyMap<string, Metric>,
  errorsOf: ErrorsOf,
): UncertainReading[] {
  const found = new Map<string, UncertainReading>();
  for (const [metric, held] of limits) {
    const value = reading(shot.values, metric);
    const errors = errorsOf(metric, shot);
    if (value === undefined || errors === null) continue;
    const same = meaningOf(metric, shot, vocabulary);
    const before = found.get(same);
    const all = [...new Set([...(before?.limits ?? []), ...held])].sort((one, other) => one - other);
    found.set(same, { metrics: [...(before?.metrics ?? []), metric], value, errors, limits: all });
  }
  return [...found.values()].filter(({ value, errors, limits }) =>
    limits.some((limit) => Math.abs(value - limit) < FAR * reachOf(errors)),
  );
}

/** The metric that another one, computed by a formula that only names it, is the same as. */
function meaningOf(metric: string, shot: Shot, vocabulary: ReadonlyMap<string, Metric>): string {
  const seen = new Set<string>();
  for (let name = metric; !seen.has(name); ) {
    const formula = vocabulary.get(name)?.formula ?? null;
    if (formula?.kind !== "metric" || !shot.derived.includes(name)) return name;
    seen.add(name);
    name = formula.name;
  }
  return metric;
}

function reachOf({ random, shared }: ReadingErrors): number {
  return [...shared.values()].reduce((total, slope) => total + Math.abs(slope), random);
}
