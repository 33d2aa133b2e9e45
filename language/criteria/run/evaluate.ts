/**
 * `3 in a row on target`: so many hits one after the other, somewhere in the block. A shot that could not be judged
 * neither breaks a run that might be nor completes one for certain. A shot that fails a requirement of the block is no
 * hit and ends a run (`required.ts`). Where readings may be off, the probability of a run decides, shot by shot from the
 * random errors and averaged over those that all shots share.
 */
import type { RunCriterion } from "../../../shared/plan-model.ts";
import { type RunResult, runVerdict, type Tally, tally } from "../../../shared/statistics/counting.ts";
import { doubtOfRun } from "../chances.ts";
import { metricsOfSubject } from "../condition.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { doubtfulShots, withDoubt } from "../doubt.ts";
import { judged, observedHits, plannedShots, settlesUnmeasured, tallyOf } from "../hits.ts";
import { missingReadings, notHitYet, notJudged, shortOf } from "../open-shots.ts";
import {
  type Counted,
  countedTruths,
  type Fate,
  hasRequirements,
  predicate,
  qualified,
  requirementCautions,
} from "../required.ts";
import type { Truth } from "../verdict.ts";
import { joined, shots as shotsInWords, unlessZero } from "../wording.ts";

const FATE: Fate = ["it ends a run", "each ends a run"];

export const run: CriterionKind<"run"> = {
  sentence: ({ length, subject }, isRequiring) => {
    const inARow = length === 1 ? "1 shot" : `${length} shots in a row`;
    return `Somewhere in the block, ${inARow} ${predicate(wanted(subject), isRequiring, length)}.`;
  },
  metrics: ({ subject }) => metricsOfSubject(subject),
  evaluate,
};

function evaluate({ length, subject }: RunCriterion, shots: CountedShots): Outcome {
  const counted = wanted(subject);
  const truths = countedTruths(counted, shots);
  const planned = plannedShots(shots);
  const standing = tally(truths, planned);
  const result = runVerdict(truths, planned, length);
  const { verdict } = result;
  const phrase = qualified(counted, hasRequirements(shots));
  const outcome: Omit<Outcome, "observed" | "brief" | "value" | "settles"> = {
    verdict,
    required: `${length} in a row ${phrase}`,
    shotsUsed: judged(standing),
    tally: tallyOf(standing),
    interval: null,
    deciding: longestRun(truths),
    cautions: requirementCautions(shots, planned, FATE),
  };
  if (verdict === "not-measured") {
    return {
      ...outcome,
      observed: observedHits(standing, phrase),
      brief: "",
      value: null,
      settles: settlesUnmeasured(truths, standing, counted, shots),
    };
  }
  const asRead: Outcome = {
    ...outcome,
    observed: joined(
      longestInWords(result, standing, phrase),
      unlessZero(standing.unknown, (unknown) => `${shotsInWords(unknown)} could not be judged`),
      unlessZero(standing.toCome, (toCome) => shortOf(toCome, planned)),
    ),
    brief: `longest run ${result.longest}`,
    value: result.longest,
    settles: verdict === "undecided" ? settles(length, truths, planned, counted, shots) : null,
  };
  const chances = shots.chances(counted);
  if (chances === null) return asRead;
  const doubt = doubtOfRun(length, standing.toCome, chances, shots.decisionLevel);
  const uncertain = withDoubt(asRead, doubt, length === 1 ? "a shot" : `${length} in a row`, shots);
  return doubt.decision === "undecided"
    ? { ...uncertain, deciding: doubtfulShots(chances, shots) }
    : uncertain;
}

function wanted(subject: RunCriterion["subject"]): Counted {
  return { subject, bound: "least" };
}

function longestInWords({ longest }: RunResult, { unknown }: Tally, phrase: string): string {
  if (longest === 0) return `no shot ${phrase}${unknown > 0 ? " for certain" : ""}`;
  return `longest run: ${shotsInWords(longest)} ${phrase}`;
}

/** `needs the next 2 shots, or 3 in a row later`; `needs 3 in a row among the 5 shots not hit yet`. */
function settles(
  length: number,
  truths: readonly Truth[],
  planned: number,
  { subject }: Counted,
  shots: CountedShots,
): string {
  const { unknown, toCome } = tally(truths, planned);
  const { stillNeeded } = runVerdict(truths, planned, length);
  const readings = () => `${missingReadings(truths, subject, shots)} for ${notJudged(unknown)}`;
  const readingsAloneDo = runVerdict(truths, truths.length, length).longestPossible >= length;
  if (stillNeeded === undefined)
    return readingsAloneDo ? readings() : `${readings()}, and ${notHitYet(toCome)}`;
  const coming = stillNeeded === length ? anywhere(length, toCome) : goingOn(length, stillNeeded, toCome);
  if (readingsAloneDo) return `${coming}, or ${readings()}`;
  const lastPossible = truths.length - 1 - truths.lastIndexOf(false);
  const readingsHelp = lastPossible > length - stillNeeded;
  return readingsHelp ? `${coming}, or fewer with ${readings()}` : coming;
}

/** A run from scratch. */
function anywhere(length: number, toCome: number): string {
  if (length === toCome) return `needs ${length === 1 ? "" : "each of "}${notHitYet(toCome)}`;
  return `needs ${length}${length === 1 ? " of" : " in a row among"} ${notHitYet(toCome)}`;
}

/** A run under way; where it breaks, there may still be room for another. */
function goingOn(length: number, stillNeeded: number, toCome: number): string {
  const next = stillNeeded === 1 ? "the next shot" : `the next ${shotsInWords(stillNeeded)}`;
  return `needs ${next}${toCome > length ? `, or ${length} in a row later` : ""}`;
}

/** The shots of the longest run of hits, the first of several equally long ones. */
function longestRun(truths: readonly Truth[]): readonly number[] {
  let best = { start: 0, length: 0 };
  let start = 0;
  for (const [index, truth] of truths.entries()) {
    if (truth !== true) start = index + 1;
    else if (index + 1 - start > best.length) best = { start, length: index + 1 - start };
  }
  return Array.from({ length: best.length }, (_, offset) => best.start + offset);
}
