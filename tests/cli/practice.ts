/** A small coaching folder: one plan, one player, two sessions with their tables. */
import type { Files } from "./command-line.ts";

export const PLAN = `plan "Start line" {
  for 7-iron
  caution "Stop on pain."

  block "Wake up" warm-up {
    2 shots at 50 % effort
  }

  block "Gate" test {
    5 shots
    leave out shots where smash-factor below 1.2
    target start-direction within ±2°
    success {
      at least 3 of 5 shots on target
      average carry at least 150 yd
    }
  }
}
`;

export const LIBRARY = `player "P-01" {
  right-handed
}

source "Table" {
  column "Block" is block
  column "Start" is start-direction in ° positive right
  column "Carry" is carry in yd
  column "Smash" is smash-factor
}
`;

/** A session of the plan above, with its table. */
export function session(name: string, table: string): string {
  return `use "../library/range"
use "../plans/irons"

session ${JSON.stringify(name)} {
  plan "Start line"
  player "P-01"
  date 2026-10-12
  data ${JSON.stringify(table)} from "Table"
}
`;
}

/** The table of a session, one row of `start-direction, carry, smash-factor` for each shot of the block "Gate". */
export function table(
  ...gate: readonly (readonly [start: number | string, carry: number | string, smash: number])[]
): string {
  const rows = [
    ["Block", "Start", "Carry", "Smash"],
    ["Wake up", 0, 120, 1.3],
    ["Wake up", 0, 130, 1.3],
    ...gate.map((row) => ["Gate", ...row]),
  ];
  return `${rows.map((row) => row.join(",")).join("\n")}\n`;
}

/** Four of five on target, long enough; one shot is left out for its strike. */
export const GOOD = table(
  [1, 155, 1.35],
  [-1, 152, 1.36],
  [9, 90, 1.05],
  [0.5, 156, 1.34],
  [4, 150, 1.3],
  [1.5, 158, 1.37],
);

/** One of five on target. */
export const POOR = table([5, 155, 1.35], [-6, 152, 1.36], [0.5, 156, 1.34], [4, 150, 1.3], [3.5, 158, 1.37]);

/** One of three on target, two still to come. */
export const CUT_SHORT = table([5, 155, 1.35], [-6, 152, 1.36], [0.5, 156, 1.34]);

/** A folder in which the session "Monday" recorded this table. */
export function practice(monday: string | Uint8Array = GOOD): Record<string, string | Uint8Array> {
  return {
    "library/range.drill": LIBRARY,
    "plans/irons.drill": PLAN,
    "sessions/monday.drill": session("Monday", "../data/monday.csv"),
    "data/monday.csv": monday,
  } satisfies Files;
}
