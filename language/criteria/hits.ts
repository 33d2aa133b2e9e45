/** Hits among the shots of a block: what counts, shares and runs have in common. */
import type { Tally, Verdict } from "../../shared/score-report.ts";
import {
  type CountResult,
  countVerdict,
  type Tally as Standing,
  tally,
} from "../../shared/statistics/counting.ts";
import { doubtOfCount } from "./chances.ts";
import type { CountedShots, Outcome } from "./criterion.ts";
import { doubtfulShots, withDoubt } from "./doubt.ts";
import { missingReadings, notHitYet, openShots, shortOf } from "./open-shots.ts";
import {
  type Counted,
  countedTruths,
  FATES,
  hasRequirements,
  qualified,
  requirementCautions,
} from "./required.ts";
import type { Truth } from "./verdict.ts";
import { joined, shots as shotsInWords, unlessZero } from "./wording.ts";

/** "At least (at most) `count` of the first `outOf` shots are …", about the shots hit. */
export interface CountClaim extends Counted {
  readonly count: number;
  readonly outOf: number;
}

/**
 * The shots a criterion over the whole block is about: those the block asks for, and of a block that asks for "at
 * least" so many all that were hit.
 */
export function plannedShots(shots: CountedShots): number {
  return Math.max(shots.asked, shots.size);
}

/** A count that says something else of itself: what was asked for and seen, each as in an outcome. */
export type OwnWords = Partial<Pick<Outcome, "required" | "observed" | "brief" | "value">>;

/** The verdict on a count over the shots hit, as soon as no further shot can change it. */
export function judgeCount(claim: CountClaim, shots: CountedShots, words: OwnWords = {}): Outcome {
  const asRead = { ...judgeAsRead(claim, shots), ...words };
  const chances = shots.chances(claim);
  if (chances === null || asRead.verdict === "not-measured") return asRead;
  const toCome = Math.max(0, claim.outOf - shots.size);
  const doubt = doubtOfCount({ ...claim, toCome }, chances, shots.decisionLevel);
  const wanted = `${claim.count} or ${claim.bound === "least" ? "more" : "fewer"}`;
  const outcome = withDoubt(asRead, doubt, wanted, shots);
  const truths = countedTruths(claim, shots).slice(0, claim.outOf);
  return {
    ...outcome,
    deciding:
      doubt.decision === "undecided"
        ? doubtfulShots(chances, shots).filter((index) => index < claim.outOf)
        : decidingShots(doubt.decision, claim.bound, truths),
  };
}

/** The same with every reading taken as exact. */
function judgeAsRead(claim: CountClaim, shots: CountedShots): Outcome {
  const truths = countedTruths(claim, shots).slice(0, claim.outOf);
  const standing = tally(truths, claim.outOf);
  const result = countVerdict(standing, claim.count, `at ${claim.bound}`);
  const phrase = qualified(claim, hasRequirements(shots));
  const { verdict } = result;
  return {
    verdict,
    required: `at ${claim.bound} ${claim.count} of ${shotsInWords(claim.outOf)} ${phrase}`,
    observed: observedHits(standing, phrase),
    brief: briefHits(standing),
    value: judged(standing) === 0 ? null : standing.hits,
    shotsUsed: judged(standing),
    tally: tallyOf(standing),
    interval: null,
    settles:
      verdict === "not-measured"
        ? settlesUnmeasured(truths, standing, claim, shots)
        : verdict === "undecided"
          ? settlesCount(claim, standing, result)
          : null,
    deciding: decidingShots(verdict, claim.bound, truths),
    cautions: requirementCautions(shots, claim.outOf, FATES[claim.bound]),
  };
}

/** How many shots could be judged at all. */
export function judged({ hits, misses }: Standing): number {
  return hits + misses;
}

export function tallyOf({ hits, misses, unknown }: Standing): Tally {
  return { hits, misses, unknown };
}

/**
 * `9 of 13 shots on target; 1 more could not be judged; 4 shots short of 18`. `phrase` says which shots are counted, and
 * `remark` follows it.
 */
export function observedHits(standing: Standing, phrase: string, remark = ""): string {
  const { hits, unknown, toCome } = standing;
  const known = judged(standing);
  if (known + unknown === 0) return "no shots hit";
  const missing = unlessZero(toCome, (count) => shortOf(count, known + unknown + toCome));
  if (known === 0) {
    const none =
      unknown === 1 ? "the one shot could not be judged" : `none of ${unknown} shots could be judged`;
    return joined(none, missing);
  }
  return joined(
    `${hits} of ${shotsInWords(known)} ${phrase}${remark}`,
    unlessZero(unknown, (count) => `${count} more could not be judged`),
    missing,
  );
}

/** `9 of 13`, and a remark where one is given; empty where no shot could be judged. */
export function briefHits(standing: Standing, remark = ""): string {
  const known = judged(standing);
  return known === 0 ? "" : `${standing.hits} of ${known}${remark}`;
}

/** What would make an unmeasured criterion measured. */
export function settlesUnmeasured(
  truths: readonly Truth[],
  { unknown, toCome }: Standing,
  { subject }: Counted,
  shots: CountedShots,
): string {
  if (unknown > 0) return missingReadings(truths, subject, shots);
  return toCome === 0 ? "shots to judge" : notHitYet(toCome);
}

/** `needs 3 of the 6 shots not hit yet`; of "at most": `allows 1 of the 6 shots not hit yet`. */
function settlesCount(
  { bound }: Counted,
  standing: Standing,
  { stillNeeded, stillPossible }: CountResult,
): string {
  const open = openShots(standing);
  const among = standing.toCome > 0 && standing.unknown > 0 ? "among" : "of";
  if (bound === "most") {
    if (stillPossible === 1) return `holds unless ${open} is one more`;
    const allowed = stillPossible - stillNeeded;
    return `allows ${allowed === 0 ? "none" : allowed} ${among} ${open}`;
  }
  if (stillPossible === 1) return `needs ${open}`;
  if (stillNeeded < stillPossible) return `needs ${stillNeeded} ${among} ${open}`;
  return `needs ${standing.toCome === 1 && standing.unknown === 1 ? "both" : "each of"} ${open}`;
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
