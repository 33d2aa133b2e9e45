/**
 * A share as ability: what the player hits in the long run, judged by exact binomial tails and at the planned number of
 * shots only. A verdict looked for after every shot would be wrong about twice as often as promised.
 */
import type { ShareCriterion } from "../../../shared/plan-model.ts";
import type { Interval as Limits } from "../../../shared/score-report.ts";
import { type Tally as Standing, tally } from "../../../shared/statistics/counting.ts";
import {
  criticalCounts,
  shareLimits,
  shareShotsToDecide,
  shareVerdict,
} from "../../../shared/statistics/proportion.ts";
import type { Decision } from "../../../shared/statistics/verdict.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import {
  decidingShots,
  judged,
  observedHits,
  plannedShots,
  requirementCautions,
  settlesUnmeasured,
  tallyOf,
} from "../hits.ts";
import {
  impossibleConfidence,
  percent,
  qualified,
  roundedPercent,
  settlesAbility,
  shots as shotsInWords,
} from "../wording.ts";

export function judgeAbility(criterion: ShareCriterion, confidence: number, shots: CountedShots): Outcome {
  const { bound, share, subject } = criterion;
  const truths = shots.hits(subject);
  const planned = plannedShots(shots);
  const standing = tally(truths, planned);
  const known = judged(standing);
  const outcome = {
    required: `at ${bound} ${percent(share)} of shots ${qualified(subject)} in the long run, at ${percent(confidence)} confidence`,
    shotsUsed: known,
    tally: tallyOf(standing),
    interval: null,
    cautions: requirementCautions(shots, planned),
  };
  if (known === 0) {
    return {
      ...outcome,
      verdict: "not-measured",
      observed: observedHits(standing, subject),
      value: null,
      settles: settlesUnmeasured(standing),
      deciding: decidingShots("not-measured", bound, truths),
    };
  }
  const observed = standing.hits / known;
  const verdict = judge(criterion, confidence, standing);
  return {
    ...outcome,
    verdict,
    observed: observedHits(standing, subject, ` (${roundedPercent(observed)})`),
    value: observed,
    interval: limits(standing, confidence),
    settles: verdict === "undecided" ? settles(criterion, confidence, standing, planned) : null,
    deciding: decidingShots(verdict, bound, truths),
  };
}

/**
 * The verdicts with all unknown shots missed and with all of them hit. Every way between lies between these two, so
 * only where they agree is anything decided.
 */
function extremes({ share, bound }: ShareCriterion, confidence: number, { hits, misses, unknown }: Standing) {
  const judge = (count: number) =>
    shareVerdict(count, hits + misses + unknown, share, confidence, `at ${bound}`);
  return { allMissed: judge(hits), allHit: judge(hits + unknown) };
}

function judge(criterion: ShareCriterion, confidence: number, standing: Standing): Decision {
  if (standing.toCome > 0) return "undecided";
  const { allMissed, allHit } = extremes(criterion, confidence, standing);
  return allMissed === allHit ? allMissed : "undecided";
}

/** The limits that belong to the verdict; with shots that could not be judged, the widest they can be. */
function limits({ hits, misses, unknown, toCome }: Standing, confidence: number): Limits | null {
  if (toCome > 0) return null;
  const size = hits + misses + unknown;
  const low = shareLimits(hits, size, confidence)?.low;
  const high = shareLimits(hits + unknown, size, confidence)?.high;
  if (low === undefined || high === undefined) return null;
  return {
    low,
    high,
    confidence,
    method: "one-sided Clopper–Pearson limits (exact binomial)",
    text: `${roundedPercent(low)} to ${roundedPercent(high)}`,
  };
}

function settles(criterion: ShareCriterion, confidence: number, standing: Standing, planned: number): string {
  const impossible = impossibleConfidence(confidence);
  if (impossible !== null) return impossible;
  const { share, bound } = criterion;
  if (standing.toCome > 0) {
    const { met } = criticalCounts(planned, share, confidence, `at ${bound}`);
    const need =
      met === undefined
        ? `no result of ${shotsInWords(planned)} can show it`
        : `${met} ${bound === "least" ? "or more" : "or fewer"} of ${planned} show it`;
    return `${shotsInWords(standing.toCome)} to come: ability is judged when all ${planned} are hit; ${need}`;
  }
  const { allMissed, allHit } = extremes(criterion, confidence, standing);
  if (allMissed !== allHit) return "readings for the shots that could not be judged";
  const known = judged(standing);
  return settlesAbility(shareShotsToDecide(standing.hits, known, share, confidence), known);
}
