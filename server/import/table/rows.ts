/** Which rows of a table hold shots. */

import { plural } from "../../../shared/plural.ts";
import type { Columns } from "../cells/columns.ts";
import { isBlank } from "../cells/number.ts";
import { namesUnit } from "../cells/reading.ts";
import { quote, type Report } from "../finding.ts";
import { fold } from "../spelling.ts";
import type { Table, TableRow } from "./table.ts";

/**
 * The rows that hold shots, in the order of the file. Left out are
 * - the header where it is repeated, and a row of units right under it: they hold no data
 * - rows of statistics over the shots (`Average`, `Std dev`), reported
 * - rows that end before any reading, such as a line of text under the table, reported
 *
 * A row with more cells than there are columns has its readings blanked, and is reported: somewhere in it a separator
 * stands for something else, and nobody can tell which cells it has moved. Linear in cells.
 */
export function shotRows(table: Table, columns: Columns, report: Report): TableRow[] {
  const shots: TableRow[] = [];
  const summaries = summaryRows(table.rows);
  const width = table.header.names.length;
  const firstReading = Math.min(...columns.metrics.map((column) => column.index));
  for (const [place, row] of table.rows.entries()) {
    if (isRepeatedHeader(row, table) || (place === 0 && isUnits(row, columns))) continue;
    if (summaries.has(row)) {
      report({
        code: "row-skipped",
        severity: "warning",
        line: row.line,
        text: firstText(row),
        message: `Line ${row.line} begins with ${quote(firstText(row))}, so it was taken for a statistic over the shots and not for a shot.`,
      });
    } else if (columns.metrics.length > 0 && row.cells.length <= firstReading) {
      report({
        code: "row-ragged",
        severity: "warning",
        line: row.line,
        text: firstText(row),
        message: `Line ${row.line} has ${plural(row.cells.length, "cell")} where the header has ${width}, and ends before any reading, so it was not taken for a shot.`,
      });
    } else if (row.cells.slice(width).some((cell) => cell.trim() !== "")) {
      report({
        code: "row-ragged",
        severity: "warning",
        line: row.line,
        message: `Line ${row.line} has ${plural(row.cells.length, "cell")} where the header has ${width}. One of its texts or numbers must hold the separator, so its readings may stand in the wrong columns and are left unknown. Put that cell in quotation marks.`,
      });
      shots.push(withoutReadings(row, columns));
    } else {
      shots.push(row);
      reportMissingCells(row, columns, width, report);
    }
  }
  return shots;
}

function reportMissingCells(row: TableRow, columns: Columns, width: number, report: Report): void {
  const missing = columns.metrics.filter((column) => column.index >= row.cells.length);
  if (missing.length === 0) return;
  report({
    code: "row-ragged",
    severity: "warning",
    line: row.line,
    message: `Line ${row.line} has ${plural(row.cells.length, "cell")} where the header has ${width}; ${plural(missing.length, "reading")} at its end ${missing.length === 1 ? "is" : "are"} left unknown.`,
  });
}

function withoutReadings(row: TableRow, columns: Columns): TableRow {
  const cells = [...row.cells];
  for (const { index } of columns.metrics) cells[index] = "";
  return { line: row.line, cells };
}

function isRepeatedHeader(row: TableRow, { header }: Table): boolean {
  return row.cells.every((cell, index) => cell === header.names[index]);
}

/** A unit in brackets or the unit of its column, but not a single digit, where the readings would be; no club, no block. */
function isUnits(row: TableRow, columns: Columns): boolean {
  const cellOf = (column: { index: number }) => (row.cells[column.index] ?? "").trim();
  return (
    columns.metrics.every((column) => !/\d/.test(cellOf(column))) &&
    columns.metrics.some((column) => {
      const cell = cellOf(column);
      return /^[[(].+[\])]$/.test(cell) || namesUnit(cell, column.content.unit);
    }) &&
    [...columns.clubs, ...columns.blocks].every((column) => isBlank(cellOf(column)))
  );
}

/** Words that head a statistic, folded. */
const STATISTICS = new Set(
  "average avg mean median stdev stddev sd standarddeviation mittelwert durchschnitt standardabweichung moyenne écarttype media promedio gemiddelde".split(
    " ",
  ),
);
/** Words that head a statistic when they stand beside one of those; alone they may be anything. */
const BESIDE_STATISTICS = new Set(
  "min minimum max maximum range sum total count variance deviation best worst".split(" "),
);

/** Runs of rows that begin with words for statistics, at least one of them unmistakable. */
function summaryRows(rows: readonly TableRow[]): Set<TableRow> {
  const summaries = new Set<TableRow>();
  let run: TableRow[] = [];
  let unmistakable = false;
  const closeRun = () => {
    if (unmistakable) for (const row of run) summaries.add(row);
    run = [];
    unmistakable = false;
  };
  for (const row of rows) {
    const word = fold(firstText(row));
    const certain = STATISTICS.has(word);
    if (certain || BESIDE_STATISTICS.has(word)) {
      run.push(row);
      unmistakable ||= certain;
    } else closeRun();
  }
  closeRun();
  return summaries;
}

function firstText(row: TableRow): string {
  return row.cells.find((cell) => cell.trim() !== "")?.trim() ?? "";
}
