/** Columns that say nothing but a side, row by row, of amounts that stand in another column. */
import type { Form } from "./form.ts";

/** The words by which people name sides, whatever the language of plans has. */
export const SIDES: Readonly<Record<string, "left" | "right">> = {
  l: "left",
  left: "left",
  li: "left",
  links: "left",
  r: "right",
  right: "right",
  re: "right",
  rechts: "right",
};
const NEITHER = new Set(["", "-", "0", "c", "center", "centre", "middle", "straight"]);

/** A column in which every cell names a side or none, and both sides are named. */
export interface SideColumn {
  readonly header: string;
  /** What the texts in it mean. */
  readonly sides: ReadonlyMap<string, "left" | "right">;
}

export function sideColumns({ names, rows }: Pick<Form, "names" | "rows">): SideColumn[] {
  return names.flatMap((header, place) => {
    const sides = new Map<string, "left" | "right">();
    for (const { cells } of rows) {
      const text = (cells[place] ?? "").trim();
      const side = SIDES[text.toLowerCase()];
      if (side !== undefined) sides.set(text, side);
      else if (!NEITHER.has(text.toLowerCase())) return [];
    }
    return new Set(sides.values()).size === 2 ? [{ header, sides }] : [];
  });
}

/** Whether numbers are amounts: several, and none below zero. */
export function areAmounts(numbers: readonly (number | undefined)[]): boolean {
  const stated = numbers.filter((number) => number !== undefined);
  return stated.length > 2 && stated.every((number) => number >= 0);
}
