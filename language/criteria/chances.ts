/**
 * Shots that are counted by readings that may be off: how probable it is that so many of them count.
 *
 * The random errors of the readings are independent from shot to shot. The systematic ones are the same for all shots of a
 * session, so a probability is first taken as if they were known and then averaged over what they may be. A shot that a
 * reading is missing for may count or not: the two probabilities of a verdict are those with all such shots missed, and
 * with all of them hit.
 */
import { verdictByProbability } from "../../shared/statistics/conformance.ts";
import { atLeastHits } from "../../shared/statistics/poisson-binomial.ts";
import { runProbability } from "../../shared/statistics/streak.ts";
import type { Decision } from "../../shared/statistics/verdict.ts";
import { averageOverErrors } from "./shared-errors.ts";
import type { Truth } from "./verdict.ts";

/** For each shot the probability that it counts for certain, and that it counts or cannot be told to. */
export interface ShotChances {
  readonly certain: readonly number[];
  readonly possible: readonly number[];
}

export interface Chances {
  /** For each error that all shots share how large it is at most against the random error of the same reading. */
  readonly ratios: readonly number[];
  /** With the shared errors known: they are in standard deviations, in the order of `ratios`. */
  readonly given: (errors: readonly number[]) => ShotChances;
  /** Of each shot by itself, all errors together. */
  readonly overall: () => ShotChances;
}

/** The lowest and the highest probability that a criterion is met, and the verdict that follows. */
export interface Doubt {
  readonly low: number;
  readonly high: number;
  readonly decision: Decision;
}

/** A count over the first `outOf` shots, of which `toCome` are not hit yet. */
export interface UncertainCount {
  readonly bound: "least" | "most";
  readonly count: number;
  readonly outOf: number;
  readonly toCome: number;
}

export function doubtOfCount(
  { bound, count, outOf, toCome }: UncertainCount,
  chances: Chances,
  level: number,
): Doubt {
  const needed = bound === "least" ? count : count + 1;
  const atLeast = (side: keyof ShotChances, k: number) =>
    averageOverErrors(chances.ratios, (errors) =>
      atLeastHits(chances.given(errors)[side].slice(0, outOf), k),
    );
  const fewest = atLeast("certain", needed);
  const most =
    toCome === 0 && isFullyKnown(chances) ? fewest : atLeast("possible", Math.max(0, needed - toCome));
  return bound === "least" ? doubt(fewest, most, level) : doubt(1 - most, 1 - fewest, level);
}

/** Of `length` shots in a row that count, of which `toCome` are not hit yet. */
export function doubtOfRun(length: number, toCome: number, chances: Chances, level: number): Doubt {
  const coming = Array.from({ length: toCome }, () => 1);
  const low = averageOverErrors(chances.ratios, (errors) =>
    runProbability(chances.given(errors).certain, length),
  );
  const high =
    toCome === 0 && isFullyKnown(chances)
      ? low
      : averageOverErrors(chances.ratios, (errors) =>
          runProbability([...chances.given(errors).possible, ...coming], length),
        );
  return doubt(low, high, level);
}

/** Whether each shot counts, where that is as sure as the level asks for; undefined where it is not. */
export function sureTruths(chances: Chances, level: number): Truth[] {
  const { certain, possible } = chances.overall();
  return certain.map((probability, index) => {
    if (verdictByProbability(probability, level) === "met") return true;
    return verdictByProbability(possible[index] ?? 1, level) === "missed" ? false : undefined;
  });
}

function isFullyKnown(chances: Chances): boolean {
  const { certain, possible } = chances.overall();
  return certain.every((probability, index) => probability === possible[index]);
}

function doubt(low: number, high: number, level: number): Doubt {
  if (verdictByProbability(low, level) === "met") return { low, high, decision: "met" };
  const isMissed = verdictByProbability(high, level) === "missed";
  return { low, high, decision: isMissed ? "missed" : "undecided" };
}
