/**
 * A baseline that was picked because it was bad overstates what is gained later: some of the gain comes without any change
 * (Davis 1976; Barnett, van der Pols & Dobson 2005). How much hangs on how a player's sessions vary, which few have stated, so
 * that it is a caution and no number.
 */
import type { Sample } from "./summary.ts";

/**
 * Whether a baseline deserves the caution: its average is worse than the usual number by more than its own standard error.
 *
 * @param better the side on which a number is better: 1 above, −1 below
 */
export function isUnusuallyBad({ n, mean, sd }: Sample, usual: number, better: 1 | -1): boolean {
  return sd !== undefined && (usual - mean) * better > sd / Math.sqrt(n);
}
