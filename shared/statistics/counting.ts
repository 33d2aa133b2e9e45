/**
 * Counts and runs over the shots hit, in three-valued logic: a shot hit, missed, or cannot be told.
 * A shot that cannot be told is neither dropped nor taken for a miss. Nothing is said here about ability.
 */
import type { Bound, Verdict } from "./verdict.ts";

/** `true` a hit, `false` a miss, `undefined` unknown (the value is missing). */
export type Outcome = boolean | undefined;

/** How the planned shots stand. */
export interface Tally {
  readonly hits: number;
  readonly misses: number;
  readonly unknown: number;
  readonly toCome: number;
}

export interface CountResult {
  readonly verdict: Verdict;
  /** Hits ("at most": misses) still needed, 0 when there are enough. */
  readonly stillNeeded: number;
  /** Shots that may still supply them: the unknown ones and those to come. */
  readonly stillPossible: number;
}

export interface RunResult {
  readonly verdict: Verdict;
  /** The longest run for certain: unknown shots end it. */
  readonly longest: number;
  /** The longest run there can still be: unknown shots and those to come continue it. */
  readonly longestPossible: number;
  /** Hits in a row, from the next shot on, that would complete the run: 0 when met, `undefined` when the shots to
   * come are too few. */
  readonly stillNeeded: number | undefined;
}

/** Counts the first `planned` shots; any beyond do not count. */
export function tally(outcomes: readonly Outcome[], planned: number): Tally {
  const counted = Math.min(outcomes.length, planned);
  let hits = 0;
  let misses = 0;
  for (let shot = 0; shot < counted; shot++) {
    if (outcomes[shot] === true) hits++;
    else if (outcomes[shot] === false) misses++;
  }
  return { hits, misses, unknown: counted - hits - misses, toCome: planned - counted };
}

/** "At least (at most) `k` of the planned shots": met or missed as soon as no further shot can change it. */
export function countVerdict(shots: Tally, k: number, bound: Bound = "at least"): CountResult {
  const { hits, misses, unknown, toCome } = shots;
  const stillPossible = unknown + toCome;
  if (bound === "at most") {
    const planned = hits + misses + stillPossible;
    return countVerdict({ hits: misses, misses: hits, unknown, toCome }, planned - k);
  }
  const isMeasured = hits + misses > 0;
  return {
    verdict: settle(isMeasured, hits >= k, hits + stillPossible < k),
    stillNeeded: Math.max(0, k - hits),
    stillPossible,
  };
}

/** "`k` hits in a row" somewhere among the first `planned` shots. */
export function runVerdict(outcomes: readonly Outcome[], planned: number, k: number): RunResult {
  const counted = outcomes.slice(0, planned);
  const toCome = planned - counted.length;
  const isMeasured = counted.some((outcome) => outcome !== undefined);
  const certain = runs(counted, (outcome) => outcome === true);
  const possible = runs(counted, (outcome) => outcome !== false);
  const longestPossible = Math.max(possible.longest, possible.last + toCome);
  const isMet = certain.longest >= k;
  const needed = isMet ? 0 : k - certain.last;
  return {
    verdict: settle(isMeasured, isMet, longestPossible < k),
    longest: certain.longest,
    longestPossible,
    stillNeeded: needed <= toCome ? needed : undefined,
  };
}

function settle(isMeasured: boolean, isMet: boolean, isMissed: boolean): Verdict {
  if (!isMeasured) return "not-measured";
  if (isMet) return "met";
  return isMissed ? "missed" : "undecided";
}

/** The length of the longest run of outcomes that continue it, and of the one at the end. */
function runs(outcomes: readonly Outcome[], continues: (outcome: Outcome) => boolean) {
  let longest = 0;
  let last = 0;
  for (const outcome of outcomes) {
    last = continues(outcome) ? last + 1 : 0;
    longest = Math.max(longest, last);
  }
  return { longest, last };
}
