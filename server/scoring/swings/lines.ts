/** Which line of a block each of its shots belongs to: `8 shots with gap-wedge at 50 % effort`. */
import type { Shots } from "../../../shared/plan-model.ts";
import type { Shot } from "../../../shared/session-data.ts";
import type { BlockShots } from "../set-aside.ts";

/** A line of a block, the shots that were given to it, and how many of its number are still to be hit. */
export interface Line {
  readonly line: Shots | null;
  readonly shots: readonly Shot[];
  readonly toCome: number;
}

/**
 * Each shot goes to the first line of its club that has room; where its club is not known, or no line has it, to the first
 * line that has room; and what is hit beyond that to the last line. Shots that do not count take no room. Shots of a block
 * that asks for no number belong to no line. Linear in the shots.
 */
export function linesOf({ block, given, counted }: BlockShots): Line[] {
  if (block.shots.length === 0) return [{ line: null, shots: given, toCome: 0 }];
  const lines = block.shots.map((line) => ({ line, shots: [] as Shot[], toCome: line.count }));
  const byClub = Map.groupBy(lines, ({ line }) => line.club);
  let next = 0;
  for (const shot of given) {
    // Those that count are among those given, in the same order.
    const takesRoom = shot === counted[next];
    if (takesRoom) next++;
    const fitting = (shot.club === null ? undefined : byClub.get(shot.club)) ?? lines;
    const found = fitting.find(({ toCome }) => toCome > 0) ?? fitting.at(-1);
    found?.shots.push(shot);
    if (found !== undefined && found.toCome > 0 && takesRoom) found.toCome--;
  }
  return lines;
}
