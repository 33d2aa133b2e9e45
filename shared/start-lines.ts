import type { Assignment } from "./session-data.ts";
import { textLiteral } from "./text-literal.ts";

/** The suggested starts of blocks as a session states them: `block "Gate" from row 13`. */
export function startLines({ suggestedStarts = [] }: Assignment): string[] {
  return suggestedStarts.map(({ block, row, file }) => {
    const of = file === null ? "" : ` of ${textLiteral(file)}`;
    return `block ${textLiteral(block)} from row ${row}${of}`;
  });
}
