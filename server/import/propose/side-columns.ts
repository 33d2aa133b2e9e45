/** Columns that say nothing but a side, row by row, of amounts that stand in another column. */
import type { Form } from "./form.ts";

const SIDES: Readonly<Record<string, "left" | "right">> = {
  l: "left",
  left: "left",
  links: "left",
  r: "right",
  right: "right",
  rechts: "right",
};
const NEITHER = new Set(["", "-", "0", "c", "center", "centre", "middle", "straight"]);

/** The headers of the columns in which every cell names a side or none, and both sides are named. */
export function sideColumns({ names, rows }: Pick<Form, "names" | "rows">): string[] {
  return names.filter((_, place) => {
    const seen = new Set<string>();
    for (const { cells } of rows) {
      const text = (cells[place] ?? "").trim().toLowerCase();
      const side = SIDES[text];
      if (side !== undefined) seen.add(side);
      else if (!NEITHER.has(text)) return false;
    }
    return seen.size === 2;
  });
}

/** Whether numbers are amounts: several, and none below zero. */
export function areAmounts(numbers: readonly (number | undefined)[]): boolean {
  const stated = numbers.filter((number) => number !== undefined);
  return stated.length > 2 && stated.every((number) => number >= 0);
}
