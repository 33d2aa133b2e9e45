/**
 * What several criteria at once do to the promise of each.
 *
 * "All of" needs no correction: a false "all met" has the allowed probability at most (intersection–union; Berger 1982).
 * "Any of" would be falsely met up to k times as often, so each criterion takes its share of the error (Bonferroni).
 */
import { allowedError } from "./confidence.ts";

/** The probability that independent verdicts, each right with its confidence, are all right. */
export function chanceAllRight(confidences: readonly number[]): number {
  return confidences.reduce((chance, confidence) => chance * confidence, 1);
}

/**
 * The confidence at which each of k criteria must be met so that "`needed` of them" keeps the confidence as a whole:
 * 1 − (1 − confidence)/(k − needed + 1). All of them: as it is; any of them: a k-th of the error each (Benjamini & Heller
 * 2008 for what lies between). NaN for a confidence outside 0.5 … 1.
 */
export function confidenceEach(confidence: number, k: number, needed: number): number {
  return 1 - allowedError(confidence) / (k - needed + 1);
}
