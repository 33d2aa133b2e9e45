/** Pauses between shots that are clear enough to part blocks. */
import type { Hit } from "../cells/hits.ts";

/** A pause is clear when it is this many times as long as any pause that parts nothing, and lasts this long. */
const CLEARLY_LONGER = 3;
const SHORTEST = 60;

export interface Pause {
  /** The place among all shots, from 0, of the first one after the pause. */
  readonly position: number;
  /** Seconds. */
  readonly length: number;
}

/**
 * The pauses that part the shots into so many groups, in order; undefined where no such number of pauses stands out, where
 * not every shot has a time, or where the times do not rise.
 */
export function clearPauses(hits: readonly Hit[], groups: number): Pause[] | undefined {
  if (groups < 2 || hits.length < groups) return undefined;
  const pauses: Pause[] = [];
  for (let position = 1; position < hits.length; position++) {
    const from = hits[position - 1]?.time ?? null;
    const to = hits[position]?.time ?? null;
    if (from === null || to === null || to < from) return undefined;
    pauses.push({ position, length: to - from });
  }
  const byLength = pauses.toSorted((one, other) => other.length - one.length);
  const shortest = byLength[groups - 2]?.length ?? 0;
  const next = byLength[groups - 1]?.length ?? 0;
  if (shortest < SHORTEST || shortest < CLEARLY_LONGER * next) return undefined;
  return byLength.slice(0, groups - 1).sort((one, other) => one.position - other.position);
}
