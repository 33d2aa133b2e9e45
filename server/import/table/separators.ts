/** What stands between two cells. */
import { cellsIn, type Gap, isRuleAcross } from "./aligned.ts";
import { DelimitedReader, splitText, type TableRecord } from "./delimited.ts";

/**
 * In the order in which they are preferred where they fit equally well, which is all of them where there is one column: the
 * first, since no number holds it.
 */
export const SEPARATORS = { tab: "\t", semicolon: ";", comma: ",", pipe: "|" } as const;

export type SeparatorName = keyof typeof SEPARATORS | "spaces";

/** How the cells of a table are parted. */
export interface Parting {
  readonly separator: SeparatorName;
  /** Between columns, where that is by spaces. */
  readonly gaps: readonly Gap[];
  /** Whether each line stands in quotation marks as a whole, as when a table was saved from the first column of a sheet. */
  readonly isWrapped: boolean;
}

/** A character that is in no text. */
const NO_SEPARATOR = "\0";

/** Reads the records of a table from a line on. In one that is aligned a record is a line. */
export function recordReader(
  { separator, gaps, isWrapped }: Parting,
  firstLine: number,
  take: (record: TableRecord) => void,
): DelimitedReader {
  if (separator !== "spaces") {
    const mark = SEPARATORS[separator];
    const unwrap = (record: TableRecord) => take({ ...record, cells: unwrapped(record.cells, mark) });
    return new DelimitedReader(mark, firstLine, isWrapped ? unwrap : take);
  }
  return new DelimitedReader(NO_SEPARATOR, firstLine, (record) => {
    const [line = ""] = record.cells;
    if (!isRuleAcross(line, gaps)) take({ ...record, cells: cellsIn(line, gaps) });
  });
}

function unwrapped(cells: readonly string[], mark: string): readonly string[] {
  const [line = "", ...others] = cells;
  return others.length > 0 || line.includes("\n") ? cells : (splitText(line, mark).records[0]?.cells ?? []);
}
