/** In which order the shots of a table were hit. */
import { quote, type Report } from "../finding.ts";
import type { TableRow } from "../table/table.ts";
import { moment, timeOfDay } from "./moment.ts";
import { type DecimalMark, isBlank, parseNumber } from "./number.ts";

type Key = number | string;

/** One way to read the cells of the column, and what to call what it reads. */
interface Kind {
  readonly noun: string;
  readonly key: (text: string) => Key | undefined;
}

/**
 * The rows in the order that a column gives: by number where most of its cells are numbers; else by time of day, or by
 * date and time, where most are that; else as text, in which runs of digits count as numbers. Rows that are equal keep
 * their order. A row without a cell to order it by stays behind the row above it; where there is one that is not like
 * the others, that is reported. Costs n log n comparisons.
 */
export function inOrder(
  rows: readonly TableRow[],
  column: { readonly index: number; readonly header: string },
  decimal: DecimalMark,
  report: Report,
): TableRow[] {
  const texts = rows.map((row) => (row.cells[column.index] ?? "").trim());
  const kind = kindOf(
    texts.filter((text) => !isBlank(text)),
    decimal,
  );
  let last: Key | undefined;
  const keyed = rows.map((row, place) => {
    const text = texts[place] ?? "";
    const key = isBlank(text) ? undefined : kind.key(text);
    if (key === undefined && !isBlank(text)) {
      report({
        code: "cell-unreadable",
        severity: "warning",
        line: row.line,
        column: column.header,
        text,
        message: `${quote(text)} in column ${quote(column.header)} is no ${kind.noun} as in the other rows, so this shot was put behind the one above it.`,
      });
    }
    last = key ?? last;
    return { row, key: last };
  });
  return keyed.sort((one, other) => compare(one.key, other.key)).map(({ row }) => row);
}

function kindOf(texts: readonly string[], decimal: DecimalMark): Kind {
  const kinds: Kind[] = [
    { noun: "number", key: (text) => parseNumber(text, decimal) },
    { noun: "time of day", key: timeOfDay },
    { noun: "date with a time", key: moment },
  ];
  const most = kinds.find(({ key }) => {
    const read = texts.filter((text) => key(text) !== undefined).length;
    return read > texts.length / 2;
  });
  return most ?? { noun: "text", key: padded };
}

/** The text with its numbers padded, so that 9 comes before 10. */
function padded(text: string): string {
  return text.toLowerCase().replace(/\d+/g, (digits) => digits.padStart(20, "0"));
}

/** Keys of one column are all numbers or all texts; rows before the first key come first. */
function compare(one: Key | undefined, other: Key | undefined): number {
  if (one === other) return 0;
  if (one === undefined) return -1;
  if (other === undefined) return 1;
  return one < other ? -1 : 1;
}
