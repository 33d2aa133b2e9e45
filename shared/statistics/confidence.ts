/** What a stated confidence allows. */

/**
 * The probability of a wrong verdict allowed on each side: 1 − confidence.
 * NaN outside 0.5 … 1 (1 excluded): below one half "met" and "missed" could both be shown from the same shots,
 * and nothing is shown with certainty. No probability is within NaN, so every verdict is then undecided.
 */
export function allowedError(confidence: number): number {
  return confidence >= 0.5 && confidence < 1 ? 1 - confidence : Number.NaN;
}

/**
 * Whether a tail probability keeps the allowed error. Exact equality does occur (one miss against "at least
 * 90 %" has probability 0.1) and must not hang on the last bit.
 */
export function keepsError(probability: number, error: number): boolean {
  return probability <= error * (1 + 1e-12);
}
