/** Hits among the shots of a block: what counts, shares and runs have in common. */
import type { Tally, Verdict } from "../../shared/score-report.ts";
import type { Tally as Standing } from "../../shared/statistics/counting.ts";
import type { CountedShots } from "./criterion.ts";
import { missingReadings, notHitYet, shortOf } from "./open-shots.ts";
import type { Counted } from "./required.ts";
import type { Truth } from "./verdict.ts";
import { joined, shots as shotsInWords, unlessZero } from "./wording.ts";

/**
 * The shots a criterion over the whole block is about: those the block asks for, and of a block that asks for "at
 * least" so many all that were hit.
 */
export function plannedShots(shots: CountedShots): number {
  return Math.max(shots.asked, shots.size);
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
  const indices: number[] = [];
  for (let index = 0; index < truths.length; index++) if (truths[index] === wanted) indices.push(index);
  return indices;
}
