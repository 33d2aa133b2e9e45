/**
 * A share as ability: what the player hits in the long run, judged by exact binomial tails and at the planned number of
 * shots only. A verdict looked for after every shot would be wrong about twice as often as promised.
 *
 * Where readings may be off there are two doubts at once. Shots that cannot be told to count at the plan's level are then
 * treated like shots without a reading: what is decided holds with all of them missed and with all of them hit.
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
import { sureTruths } from "../chances.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { SURER } from "../doubt.ts";
import {
  briefHits,
  decidingShots,
  judged,
  observedHits,
  plannedShots,
  settlesUnmeasured,
  tallyOf,
} from "../hits.ts";
import { missingReadings, notHitYet, notJudged } from "../open-shots.ts";
import { countedTruths, FATES, hasRequirements, qualified, requirementCautions } from "../required.ts";
import type { Truth } from "../verdict.ts";
import {
  impossibleConfidence,
  joined,
  percent,
  roundedPercent,
  settlesAbility,
  shots as shotsInWords,
  unlessZero,
} from "../wording.ts";

export function judgeAbility(criterion: ShareCriterion, confidence: number, shots: CountedShots): Outcome {
  const { bound, share } = criterion;
  const truths = countedTruths(criterion, shots);
  const planned = plannedShots(shots);
  const standing = tally(truths, planned);
  const known = judged(standing);
  const phrase = qualified(criterion, hasRequirements(shots));
  const sure = surelyCounted(criterion, truths, shots);
  const outcome = {
    required: `in the long run, at ${bound} ${percent(share)} of shots ${phrase}, at ${percent(confidence)} confidence`,
    shotsUsed: known,
    tally: tallyOf(standing),
    interval: null,
    cautions: requirementCautions(shots, planned, FATES[bound]),
  };
  if (known === 0) {
    return {
      ...outcome,
      verdict: "not-measured",
      observed: observedHits(standing, phrase),
      brief: "",
      value: null,
      settles: settlesUnmeasured(truths, standing, criterion, shots),
      deciding: decidingShots("not-measured", bound, truths),
    };
  }
  const observed = standing.hits / known;
  const inPercent = ` (${roundedPercent(observed, share)})`;
  const standings = { asRead: standing, sure: tally(sure, planned) };
  const verdict = judge(criterion, confidence, standings.sure);
  return {
    ...outcome,
    verdict,
    observed: joined(observedHits(standing, phrase, inPercent), doubtful(standings)),
    brief: briefHits(standing, inPercent),
    value: observed,
    interval: limits(criterion, confidence, standings.sure),
    settles: verdict === "undecided" ? settles(criterion, confidence, standings, truths, shots) : null,
    deciding: decidingShots(verdict, bound, verdict === "undecided" ? sure : truths),
  };
}

/** How the shots stand with every reading as exact, and how they surely stand. */
interface Standings {
  readonly asRead: Standing;
  readonly sure: Standing;
}

/** Whether each shot counts, where that is as sure as the plan asks for. */
function surelyCounted(
  criterion: ShareCriterion,
  truths: readonly Truth[],
  shots: CountedShots,
): readonly Truth[] {
  const chances = shots.chances(criterion);
  return chances === null ? truths : sureTruths(chances, shots.decisionLevel);
}

/** `6 surely, 8 possibly`, where readings leave a doubt. */
function doubtful({ asRead, sure }: Standings): string | null {
  if (sure.unknown === asRead.unknown) return null;
  return `as far as the readings tell, ${sure.hits} surely and up to ${sure.hits + sure.unknown} possibly`;
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
function limits({ share }: ShareCriterion, confidence: number, standing: Standing): Limits | null {
  const { hits, misses, unknown, toCome } = standing;
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
    text: `${roundedPercent(low, share)} to ${roundedPercent(high, share)}`,
  };
}

function settles(
  criterion: ShareCriterion,
  confidence: number,
  { asRead: standing, sure }: Standings,
  truths: readonly Truth[],
  shots: CountedShots,
): string {
  const impossible = impossibleConfidence(confidence);
  if (impossible !== null) return impossible;
  if (standing.toCome > 0) {
    const planned = plannedShots(shots);
    return `${notHitYet(standing.toCome)}: ability is judged on all ${planned}, and ${whatShows(criterion, confidence, planned)}`;
  }
  const { allMissed, allHit } = extremes(criterion, confidence, sure);
  if (allMissed !== allHit) {
    const surer = sure.unknown > standing.unknown ? SURER : null;
    const missing = unlessZero(
      standing.unknown,
      (unknown) => `${missingReadings(truths, criterion.subject, shots)} for ${notJudged(unknown)}`,
    );
    return joined(missing, surer);
  }
  const known = judged(standing);
  return settlesAbility(shareShotsToDecide(standing.hits, known, criterion.share, confidence), known);
}

/** Which results of the planned shots would show it: `9 or more of 10 show it`. */
function whatShows({ share, bound }: ShareCriterion, confidence: number, planned: number): string {
  const { met } = criticalCounts(planned, share, confidence, `at ${bound}`);
  if (met === undefined) return `no result of ${shotsInWords(planned)} can show it`;
  if (bound === "most")
    return met === 0 ? `none of ${planned} shows it` : `${met} or fewer of ${planned} show it`;
  return met === planned ? `only all ${planned} show it` : `${met} or more of ${planned} show it`;
}
