/**
 * A baseline that was picked because it was bad overstates what is gained later: some of the gain comes without any change
 * (Davis 1976; Barnett, van der Pols & Dobson 2005).
 */
import { normalCdf, normalDensity } from "./distributions.ts";
import type { Sample } from "./summary.ts";

/** How a player's sessions vary. */
export interface Sessions {
  /** Standard deviation of the true session averages about the usual one. */
  readonly between: number;
  /** Standard deviation of the shots of a session. */
  readonly within: number;
  /** Shots of a baseline. */
  readonly shots: number;
}

/** How much of what baselines differ by is true: between²/(between² + within²/shots), 0 … 1. */
export function reliability({ between, within, shots }: Sessions): number {
  const variance = (between * between * shots) / (within * within);
  return variance === Number.POSITIVE_INFINITY ? 1 : variance / (variance + 1);
}

/** The gain to expect without any change after a baseline so many standard deviations below the usual number. */
export function gainWithoutChange(below: number, sessions: Sessions): number {
  return (1 - reliability(sessions)) * below * spreadOfBaselines(sessions);
}

/** The same when every baseline below that number would have been picked: it is worse on average, so the gain is more. */
export function gainWithoutChangeWhenPicked(below: number, sessions: Sessions): number {
  return gainWithoutChange(normalDensity(below) / normalCdf(-below), sessions);
}

/**
 * Whether a baseline deserves the caution: its average is worse than the usual number by more than its own standard error.
 *
 * @param better the side on which a number is better: 1 above, −1 below
 */
export function isUnusuallyBad({ n, mean, sd }: Sample, usual: number, better: 1 | -1): boolean {
  return sd !== undefined && (usual - mean) * better > sd / Math.sqrt(n);
}

function spreadOfBaselines({ between, within, shots }: Sessions): number {
  return Math.sqrt(between * between + (within * within) / shots);
}
