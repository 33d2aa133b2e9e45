/**
 * `3 in a row on target`: so many hits one after the other, somewhere in the block. A shot that could not be judged
 * neither breaks a run that might be nor completes one for certain.
 */
import type { RunCriterion } from "../../../shared/plan-model.ts";
import type { Verdict } from "../../../shared/score-report.ts";
import { type RunResult, runVerdict, tally } from "../../../shared/statistics/counting.ts";
import { metricsOfSubject } from "../condition.ts";
import type { CriterionKind } from "../criterion.ts";
import {
  judged,
  observedHits,
  plannedShots,
  requirementCautions,
  settlesUnmeasured,
  tallyOf,
} from "../hits.ts";
import type { Truth } from "../verdict.ts";
import { joined, predicate, qualified, unlessZero } from "../wording.ts";

export const run: CriterionKind<"run"> = {
  sentence: ({ length, subject }) =>
    `Somewhere in the block, ${length} shots in a row ${predicate(subject, length)}.`,
  metrics: ({ subject }) => metricsOfSubject(subject),
  evaluate: (criterion, shots) => {
    const truths = shots.hits(criterion.subject);
    const planned = plannedShots(shots);
    const standing = tally(truths, planned);
    const result = runVerdict(truths, planned, criterion.length);
    const verdict = result.verdict === "not measured" ? "not-measured" : result.verdict;
    const isMeasured = verdict !== "not-measured";
    return {
      verdict,
      required: `${criterion.length} in a row ${qualified(criterion.subject)}`,
      observed: isMeasured
        ? joined(
            longestInWords(result),
            unlessZero(standing.unknown, (unknown) => `${unknown} could not be judged`),
            unlessZero(standing.toCome, (toCome) => `${toCome} to come`),
          )
        : observedHits(standing, criterion.subject),
      value: isMeasured ? result.longest : null,
      shotsUsed: judged(standing),
      tally: tallyOf(standing),
      interval: null,
      settles: isMeasured ? settles(verdict, criterion, result) : settlesUnmeasured(standing),
      deciding: longestRun(truths),
      cautions: requirementCautions(shots, planned),
    };
  },
};

function longestInWords({ longest }: RunResult): string {
  return longest === 0 ? "no hit for certain" : `longest run ${longest} in a row`;
}

function settles(verdict: Verdict, { subject }: RunCriterion, { stillNeeded }: RunResult): string | null {
  if (verdict !== "undecided") return null;
  if (stillNeeded === undefined) return "readings for the shots that could not be judged";
  return stillNeeded === 1
    ? `needs the next shot ${qualified(subject)}`
    : `needs the next ${stillNeeded} shots in a row ${qualified(subject)}`;
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
