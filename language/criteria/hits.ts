/** Hits among the shots of a block: what counts, shares and runs have in common. */
import type { Subject } from "../../shared/plan-model.ts";
import type { Tally, Verdict } from "../../shared/score-report.ts";
import {
  type CountResult,
  countVerdict,
  type Tally as Standing,
  tally,
} from "../../shared/statistics/counting.ts";
import type { CountedShots, Outcome } from "./criterion.ts";
import type { Truth } from "./verdict.ts";
import { joined, qualified, shots as shotsInWords, unlessZero } from "./wording.ts";

/** "At least (at most) `count` of the first `outOf` shots are …", about the shots hit. */
export interface CountClaim {
  readonly bound: "least" | "most";
  readonly count: number;
  readonly outOf: number;
  readonly subject: Subject;
}

/**
 * The shots a criterion over the whole block is about: those the block asks for, and of a block that asks for "at
 * least" so many all that were hit.
 */
export function plannedShots(shots: CountedShots): number {
  return Math.max(shots.asked, shots.size);
}

/** The verdict on a count over the shots hit, as soon as no further shot can change it. */
export function judgeCount(claim: CountClaim, shots: CountedShots): Outcome {
  const truths = shots.hits(claim.subject).slice(0, claim.outOf);
  const standing = tally(truths, claim.outOf);
  const result = countVerdict(standing, claim.count, `at ${claim.bound}`);
  const verdict = result.verdict === "not measured" ? "not-measured" : result.verdict;
  return {
    verdict,
    required: `at ${claim.bound} ${claim.count} of ${shotsInWords(claim.outOf)} ${qualified(claim.subject)}`,
    observed: observedHits(standing, claim.subject),
    value: judged(standing) === 0 ? null : standing.hits,
    shotsUsed: judged(standing),
    tally: tallyOf(standing),
    interval: null,
    settles: settlesCount(verdict, claim, standing, result),
    deciding: decidingShots(verdict, claim.bound, truths),
    cautions: requirementCautions(shots, claim.outOf),
  };
}

/** How many shots could be judged at all. */
export function judged({ hits, misses }: Standing): number {
  return hits + misses;
}

export function tallyOf({ hits, misses, unknown }: Standing): Tally {
  return { hits, misses, unknown };
}

/** `9 of 13 shots on target; 1 more could not be judged; 4 to come`. `remark` follows the hits. */
export function observedHits(standing: Standing, subject: Subject, remark = ""): string {
  const { hits, unknown, toCome } = standing;
  const known = judged(standing);
  if (known + unknown === 0) return "no shots hit";
  const coming = unlessZero(toCome, (count) => `${count} to come`);
  if (known === 0) return joined(`none of ${shotsInWords(unknown)} could be judged`, coming);
  return joined(
    `${hits} of ${shotsInWords(known)} ${qualified(subject)}${remark}`,
    unlessZero(unknown, (count) => `${count} more could not be judged`),
    coming,
  );
}

/** What would make an unmeasured criterion measured. */
export function settlesUnmeasured(standing: Standing): string {
  return standing.unknown === 0
    ? `${shotsInWords(standing.toCome)} to come`
    : "readings of the metrics it is about";
}

/** `needs 3 of the next 6 shots`; of "at most": `allows 1 of the next 6 shots`. */
function settlesCount(
  verdict: Verdict,
  claim: CountClaim,
  standing: Standing,
  result: CountResult,
): string | null {
  if (verdict === "not-measured") return settlesUnmeasured(standing);
  if (verdict !== "undecided") return null;
  const { stillNeeded, stillPossible } = result;
  const open = openShots(standing);
  const among = standing.toCome > 0 && standing.unknown > 0 ? "among" : "of";
  if (claim.bound === "most") {
    const allowed = stillPossible - stillNeeded;
    return `allows ${allowed === 0 ? "none" : allowed} ${among} ${open}`;
  }
  if (stillPossible === 1) return `needs ${open}`;
  return stillNeeded === stillPossible ? `needs all of ${open}` : `needs ${stillNeeded} ${among} ${open}`;
}

/** The shots that are still open: `the next 6 shots and the 2 that could not be judged`. */
function openShots({ toCome, unknown }: Standing): string {
  const next = toCome === 1 ? "the next shot" : `the next ${toCome} shots`;
  if (unknown === 0) return next;
  if (toCome === 0)
    return unknown === 1
      ? "the shot that could not be judged"
      : `the ${unknown} shots that could not be judged`;
  return `${next} and the ${unknown === 1 ? "one" : unknown} that could not be judged`;
}

/**
 * The shots that decided: the hits where there were enough ("at least", met) or too many ("at most", missed), else the
 * misses; of an open verdict the shots that could not be judged.
 */
export function decidingShots(
  verdict: Verdict,
  bound: "least" | "most",
  truths: readonly Truth[],
): readonly number[] {
  const isOpen = verdict === "undecided" || verdict === "not-measured";
  const decisive = isOpen ? undefined : (verdict === "met") === (bound === "least");
  return indicesOf(truths, decisive);
}

/** The places where this truth stands. */
export function indicesOf(truths: readonly Truth[], wanted: Truth): readonly number[] {
  return truths.flatMap((truth, index) => (truth === wanted ? [index] : []));
}

/** Says how many of the first shots cannot be hits because they failed a requirement. */
export function requirementCautions(shots: CountedShots, outOf: number): readonly string[] {
  const refused = shots.admitted.slice(0, outOf).filter((truth) => truth === false).length;
  if (refused === 0) return [];
  return [
    `${shotsInWords(refused)} did not meet what the block requires: ${refused === 1 ? "it uses up its place but cannot count" : "they use up their places but cannot count"}.`,
  ];
}
