/** When a swing is one at full effort. */

/** From this share of a full swing on, in percent. */
export const FULL_EFFORT = 90;

/** Readings such as 0.9 · 100 are not exact in binary. */
const SLACK = 1e-7;

/** The one club that nobody swings in full. */
const PUTTER = "putter";

/** Whether a stroke with this club is a swing whose effort matters to a body. */
export function hasEffort(club: string | null | undefined): boolean {
  return club !== PUTTER;
}

/** `effort`: in percent of a full swing. One that nobody knows counts as full, so that no swing is overlooked. */
export function isFullEffort(effort: number | undefined, club: string | null | undefined): boolean {
  return effort === undefined ? hasEffort(club) : effort >= FULL_EFFORT - SLACK;
}
