/** Which rows of a table hold shots. */

import { isBlank } from "../cells/number.ts";
import { namesUnit } from "../cells/reading.ts";
import type { Columns } from "../columns.ts";
import { list, quote, type Report } from "../finding.ts";
import type { Header } from "./header.ts";
import { firstText, StatisticRows } from "./statistics.ts";
import type { TableRow } from "./table.ts";

/**
 * Passes on the rows that hold shots, in the order of the file. Left out are
 * - the header where it is repeated, and a rule or a row of units right under it: they hold no data
 * - rows of statistics over the shots (`Average`, `Std dev`), reported
 * - what stands under other column names, as in a second table further down, up to the header where it is repeated: reported
 *
 * Linear in cells.
 */
export class ShotRows {
  readonly #header: Header;
  readonly #columns: Columns;
  readonly #report: Report;
  readonly #statistics: StatisticRows<TableRow>;
  #isFirst = true;
  /** Whether the rows are those of another table. */
  #isElsewhere = false;

  constructor(header: Header, columns: Columns, report: Report, take: (row: TableRow) => void) {
    this.#header = header;
    this.#columns = columns;
    this.#report = report;
    this.#statistics = new StatisticRows(
      ({ cells }) => cells,
      take,
      (row) => this.#reportStatistic(row),
    );
  }

  /** What became of the row: it was passed on, is held until it is clear (or was, or another before it), or was left out without a word. */
  push(row: TableRow): "shot" | "held" | "nothing" {
    const isFirst = this.#isFirst;
    if (isGridLine(row.cells)) return this.#statistics.isHolding ? "held" : "nothing";
    if (isFirst && isRule(row.cells)) return "nothing"; // units may follow
    this.#isFirst = false;
    if (isRepeatedHeader(row, this.#header)) {
      const was = this.#isElsewhere ? "held" : "nothing";
      this.#statistics.end();
      this.#isElsewhere = false;
      this.#isFirst = true;
      return was;
    }
    if (this.#isElsewhere || (isFirst && isUnits(row, this.#columns))) return "nothing";
    if (isOtherHeader(row, this.#header, this.#columns)) {
      this.#statistics.end();
      this.#isElsewhere = true;
      this.#reportOther(row);
      return "held";
    }
    return this.#statistics.push(row);
  }

  /** Nothing more will come, or a shot that nobody asks for. */
  end(): void {
    this.#statistics.end();
  }

  #reportOther({ line, cells }: TableRow): void {
    this.#report({
      code: "row-skipped",
      severity: "warning",
      line,
      text: firstText(cells),
      message: `Line ${line} names other columns (${list(cells)}), so another table seems to begin there, and what stands under it was left out.`,
    });
  }

  #reportStatistic(row: TableRow): void {
    this.#report({
      code: "row-skipped",
      severity: "warning",
      line: row.line,
      text: firstText(row.cells),
      message: `Line ${row.line} begins with ${quote(firstText(row.cells))}, so it was taken for a statistic over the shots and not for a shot.`,
    });
  }
}

function isRepeatedHeader({ cells }: TableRow, { names }: Header): boolean {
  return cells[0]?.trim() === names[0] && cells.every((cell, index) => cell.trim() === names[index]);
}

/** Whether a row calls one of its columns by its name, and has words where there would be readings. */
function isOtherHeader({ cells }: TableRow, { names }: Header, { metrics }: Columns): boolean {
  const code = (cells[metrics[0]?.index ?? 0] ?? "").charCodeAt(0);
  if ((code >= 0x30 && code <= 0x39) || code === 0x2d) return false; // as on most rows
  return (
    metrics.every(({ index }) => isBlank(cells[index] ?? "") || isWord(cells[index])) &&
    metrics.some(({ index }) => isWord(cells[index])) &&
    cells.some((cell, index) => cell.trim() === names[index] && isWord(cell))
  );
}

function isWord(cell = ""): boolean {
  return /^[^\d]*\p{L}\p{L}[^\d]*$/u.test(cell);
}

/** A line that parts the header from the rows, as in Markdown: `|---|:---:|`. */
export function isRule(cells: readonly string[]): boolean {
  let isLong = false;
  for (const cell of cells) {
    const text = cell.trim();
    if (text === "") continue;
    if (!/^:?(?:-+|=+):?$/.test(text)) return false;
    isLong ||= text.length >= 3;
  }
  return isLong;
}

/** A line of a grid that is drawn with characters: `+-----+-----+`. */
function isGridLine(cells: readonly string[]): boolean {
  return cells.length === 1 && /^[-=+]*(?:[-=]{2,}\+|\+[-=]{2,})[-=+]*$/.test(cells[0]?.trim() ?? "");
}

/** A unit in brackets or the unit of its column, but not a single digit, where the readings would be; no club, no block. */
function isUnits(row: TableRow, columns: Columns): boolean {
  const cellOf = (column: { index: number }) => (row.cells[column.index] ?? "").trim();
  const isUnit = (column: Columns["metrics"][number]) =>
    namesUnit(cellOf(column).replace(/^[[(]|[\])]$/g, ""), column.content.unit);
  return (
    columns.metrics.every((column) => !/\d/.test(cellOf(column)) || isUnit(column)) &&
    columns.metrics.some((column) => /^[[(].+[\])]$/.test(cellOf(column)) || isUnit(column)) &&
    [...columns.clubs, ...columns.blocks].every((column) => isBlank(cellOf(column)))
  );
}
