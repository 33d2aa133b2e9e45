/** Which rows of a table hold shots. */

import { isBlank } from "../cells/number.ts";
import { namesUnit } from "../cells/reading.ts";
import type { Columns } from "../columns.ts";
import { quote, type Report } from "../finding.ts";
import type { Header } from "./header.ts";
import { firstText, StatisticRows } from "./statistics.ts";
import type { TableRow } from "./table.ts";

/**
 * Passes on the rows that hold shots, in the order of the file. Left out are
 * - the header where it is repeated, and a rule or a row of units right under it: they hold no data
 * - rows of statistics over the shots (`Average`, `Std dev`), reported
 *
 * Linear in cells.
 */
export class ShotRows {
  readonly #header: Header;
  readonly #columns: Columns;
  readonly #report: Report;
  readonly #statistics: StatisticRows<TableRow>;
  #isFirst = true;

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
    if (isFirst && isRule(row.cells)) return "nothing"; // units may follow
    this.#isFirst = false;
    if (isRepeatedHeader(row, this.#header) || (isFirst && isUnits(row, this.#columns))) return "nothing";
    return this.#statistics.push(row);
  }

  /** Nothing more will come, or a shot that nobody asks for. */
  end(): void {
    this.#statistics.end();
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
