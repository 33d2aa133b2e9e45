/** What stands between two cells. */
import { cellsIn, type Gap, isRuleAcross } from "./aligned.ts";
import { DelimitedReader, type TableRecord } from "./delimited.ts";

/**
 * In the order in which they are preferred where they fit equally well, which is all of them where there is one column: the
 * first, since no number holds it.
 */
export const SEPARATORS = { tab: "\t", semicolon: ";", comma: ",", pipe: "|" } as const;

export type SeparatorName = keyof typeof SEPARATORS | "spaces";

/** How the cells of a table are parted: `gaps` between columns where that is by spaces. */
export interface Parting {
  readonly separator: SeparatorName;
  readonly gaps: readonly Gap[];
}

/** A character that is in no text. */
const NO_SEPARATOR = "\0";

/** Reads the records of a table from a line on. In one that is aligned a record is a line. */
export function recordReader(
  { separator, gaps }: Parting,
  firstLine: number,
  take: (record: TableRecord) => void,
): DelimitedReader {
  if (separator !== "spaces") return new DelimitedReader(SEPARATORS[separator], firstLine, take);
  return new DelimitedReader(NO_SEPARATOR, firstLine, (record) => {
    const [line = ""] = record.cells;
    if (!isRuleAcross(line, gaps)) take({ ...record, cells: cellsIn(line, gaps) });
  });
}
