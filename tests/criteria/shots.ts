/** The shots of a block as a criterion sees them, in a compact notation. */
import { metricsIn } from "../../language/criteria/condition.ts";
import type { CountedShots, Swings } from "../../language/criteria/criterion.ts";
import type { Truth } from "../../language/criteria/verdict.ts";
import type { Hand } from "../../shared/plan-model.ts";
import { metricCalled } from "./words.ts";

export interface Circumstances {
  /** How many shots the block asks for; as many as were hit where it is not stated. */
  readonly asked?: number;
  readonly hand?: Hand;
  /** Whether each shot meets the requirements, as a pattern; the block has none where it is not stated. */
  readonly admitted?: string;
}

/** `T` a hit, `F` a miss, `U` unknown. */
export function truths(pattern: string): Truth[] {
  return [...pattern].map((letter) => {
    if (letter === "T") return true;
    if (letter === "F") return false;
    if (letter === "U") return undefined;
    throw new Error(`A pattern is made of T, F and U, not "${letter}".`);
  });
}

/** Shots of which a pattern says whether they meet the subject, whatever it is: `TTFU`. */
export function shotsLike(pattern: string, circumstances: Circumstances = {}): CountedShots {
  const { asked = pattern.length, hand = "right", admitted = "T".repeat(pattern.length) } = circumstances;
  return {
    asked,
    size: pattern.length,
    hand,
    clubs: [...pattern].map(() => null),
    metric: metricCalled,
    values: () => [...pattern].map(() => undefined),
    meeting: () => truths(pattern),
    metricsOf: (subject) => (subject.kind === "on-target" ? ["club-path"] : metricsIn(subject.condition)),
    admitted: truths(admitted),
    requiredMetrics: circumstances.admitted === undefined ? [] : ["attack-angle"],
    uncertainty: () => null,
    decisionLevel: 0.95,
    chances: () => null,
    swings: { block: swings(pattern.length), session: swings(pattern.length) },
    against: () => "there is nothing to compare with",
  };
}

/** Shots with these readings of one metric, in the unit it is shown in, target frame. `null` is unknown. */
export function shotsWith(
  metric: string,
  readings: readonly (number | null)[],
  circumstances: Circumstances = {},
): CountedShots {
  const { factor } = metricCalled(metric).unit;
  const values = readings.map((value) => (value === null ? undefined : value * factor));
  return {
    ...shotsLike("U".repeat(readings.length), circumstances),
    values: (name) => (name === metric ? values : readings.map(() => undefined)),
  };
}

/** So many swings at full effort, and none to come. */
export function swings(count: number): Swings {
  return {
    all: count,
    fullEffort: count,
    unknownEffort: 0,
    toCome: { all: 0, fullEffort: 0 },
  };
}
