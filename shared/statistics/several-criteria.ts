/**
 * What several criteria at once do to the promise of each.
 *
 * "All of" needs no correction: a false "all met" has the allowed probability at most (intersection–union; Berger 1982).
 * "Any of" would be falsely met up to k times as often, so each criterion takes its share of the error (Bonferroni). What lies
 * between needs fewer shares, since one error alone does not decide.
 */
import { allowedError } from "./confidence.ts";

/** The probability that independent verdicts, each right with its confidence, are all right. */
export function chanceAllRight(confidences: readonly number[]): number {
  return confidences.reduce((chance, confidence) => chance * confidence, 1);
}

/**
 * In how many shares the error is divided, of which each criterion about ability has one, so that "`needed` of k" is neither
 * met while it is false nor missed while it is true more often than with the allowed probability, however the criteria hang
 * together (Markov's inequality on the number of errors; for "met" Benjamini & Heller 2008).
 *
 * Met while false: of f false criteria, f ≥ k − needed + 1, at least f − (k − needed) are shown in error. The number of errors
 * is f/shares · error on average, and so reaches that with probability f/(f − k + needed) · error/shares at most, which is
 * largest where f is smallest: k − needed + 1 shares do. Missed while true: the same of the k − needed + 1 that must be missed.
 * Where all are needed a "missed" keeps no promise, and one share does.
 *
 * @param uncertain how many of the k are about ability. The others are as they are seen, which may hang on the same shots: then
 *   one error may decide, and there are no more than so many.
 */
export function sharesOfError(k: number, needed: number, uncertain: number): number {
  if (needed >= k || uncertain < 2) return 1;
  return Math.min(uncertain, Math.max(k - needed + 1, needed));
}

/**
 * The confidence of each criterion that has one of so many shares of the error: 1 − (1 − confidence)/shares.
 * NaN for a confidence outside 0.5 … 1.
 */
export function confidenceEach(confidence: number, shares: number): number {
  return 1 - allowedError(confidence) / shares;
}
