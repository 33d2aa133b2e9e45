/**
 * Shots that leave a criterion open, in words: those the plan asks for that are not hit, and those a reading is missing
 * for. Nobody here knows whether the session goes on, so the words are true of one that does and of one that is over.
 */
import type { Subject } from "../../shared/plan-model.ts";
import type { Tally } from "../../shared/statistics/counting.ts";
import type { CountedShots } from "./criterion.ts";
import type { Truth } from "./verdict.ts";
import { listed, shots as shotsInWords } from "./wording.ts";

/** `the 6 shots not hit yet` */
export function notHitYet(count: number): string {
  return count === 1 ? "the shot not hit yet" : `the ${shotsInWords(count)} not hit yet`;
}

/** `the 2 shots that could not be judged` */
export function notJudged(count: number): string {
  return count === 1
    ? "the shot that could not be judged"
    : `the ${shotsInWords(count)} that could not be judged`;
}

/** `6 shots short of 16` */
export function shortOf(count: number, planned: number): string {
  return `${shotsInWords(count)} short of ${planned}`;
}

/** Both kinds of open shots: `the 6 shots not hit yet and the 2 that could not be judged`. */
export function openShots({ toCome, unknown }: Tally): string {
  if (unknown === 0) return notHitYet(toCome);
  if (toCome === 0) return notJudged(unknown);
  return `${notHitYet(toCome)} and the ${unknown === 1 ? "one" : unknown} that could not be judged`;
}

/**
 * What is missing where it cannot be told whether a shot counts: `readings of spin-rate`. Of the metrics that decide it,
 * those are named that shots without an answer have no reading of.
 */
export function missingReadings(truths: readonly Truth[], subject: Subject, shots: CountedShots): string {
  const metrics = shots.metricsOf(subject);
  if (metrics.length === 0) return "a target, which the block does not have";
  return readingsOf(truths, [...metrics, ...shots.requiredMetrics], shots);
}

/** `readings of carry and offline`: those of these metrics that shots without an answer have no reading of. */
export function readingsOf(
  truths: readonly Truth[],
  metrics: readonly string[],
  shots: CountedShots,
): string {
  const missing = metrics.filter((metric) => {
    const values = shots.values(metric);
    return truths.some((truth, index) => truth === undefined && values[index] === undefined);
  });
  return missing.length === 0 ? NO_VARIANT : `readings of ${listed([...new Set(missing)])}`;
}

/** No reading is missing where a window does not say what it asks of such a shot. */
const NO_VARIANT =
  "a window that says what it asks with this club and at this level, and the club of each shot";
