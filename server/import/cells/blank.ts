/** Cells in which nothing was measured. */
import type { Source } from "../../../shared/plan-model.ts";
import { isBlank } from "./number.ts";

export type BlankTest = (text: string) => boolean;

/** Whether a cell is empty, only dashes, or one of the texts that the source gives for no reading, in any case. */
export function blankTest({ blanks }: Source): BlankTest {
  if (blanks.length === 0) return isBlank;
  const stated = new Set(blanks.map((text) => text.trim().toLowerCase()));
  return (text) => isBlank(text) || stated.has(text.trim().toLowerCase());
}
