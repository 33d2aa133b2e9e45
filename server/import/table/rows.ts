/** Which rows of a table hold shots. */

import { fold } from "../../../shared/fold.ts";
import { isBlank } from "../cells/number.ts";
import { namesUnit } from "../cells/reading.ts";
import type { Columns } from "../columns.ts";
import { quote, type Report } from "../finding.ts";
import { type Lookup, remembered } from "../spelling.ts";
import type { Header } from "./header.ts";
import type { TableRow } from "./table.ts";

/**
 * Passes on the rows that hold shots, in the order of the file. Left out are
 * - the header where it is repeated, and a rule or a row of units right under it: they hold no data
 * - rows of statistics over the shots (`Average`, `Std dev`), reported
 *
 * Runs of rows that may be statistics are held until it is clear; all others are passed on at once. Linear in cells.
 */
export class ShotRows {
  readonly #header: Header;
  readonly #columns: Columns;
  readonly #report: Report;
  readonly #take: (row: TableRow) => void;
  #isFirst = true;
  #run: TableRow[] = [];
  #isUnmistakable = false;
  /** The word of the last row that may be a statistic; empty where it is none. */
  #mayBe = "";

  constructor(header: Header, columns: Columns, report: Report, take: (row: TableRow) => void) {
    this.#header = header;
    this.#columns = columns;
    this.#report = report;
    this.#take = take;
  }

  /** What became of the row: it was passed on, is held until it is clear (or was, or another before it), or was left out without a word. */
  push(row: TableRow): "shot" | "held" | "nothing" {
    const isFirst = this.#isFirst;
    if (isFirst && isRule(row.cells)) return "nothing"; // units may follow
    this.#isFirst = false;
    if (isRepeatedHeader(row, this.#header) || (isFirst && isUnits(row, this.#columns))) return "nothing";
    const kind = statisticIn(firstText(row));
    // A word that may head a statistic heads no two in a row: it is a name or a kind, as `range` of balls.
    const isSame = kind === "beside" && fold(firstText(row)) === this.#mayBe;
    this.#mayBe = kind === "beside" ? fold(firstText(row)) : "";
    if (kind === undefined || isSame) {
      const same = isSame ? this.#run.pop() : undefined;
      this.end();
      if (same !== undefined) this.#take(same);
      this.#take(row);
      return isSame ? "held" : "shot"; // either way its neighbours tell what it is
    }
    this.#run.push(row);
    this.#isUnmistakable ||= kind === "statistic";
    return "held";
  }

  /** Nothing more will come, or a shot that nobody asks for. */
  end(): void {
    if (this.#run.length === 0) return;
    const run = this.#run;
    const isStatistic = this.#isUnmistakable;
    this.#run = [];
    this.#isUnmistakable = false;
    for (const row of run) {
      if (isStatistic) this.#reportStatistic(row);
      else this.#take(row);
    }
  }

  #reportStatistic(row: TableRow): void {
    this.#report({
      code: "row-skipped",
      severity: "warning",
      line: row.line,
      text: firstText(row),
      message: `Line ${row.line} begins with ${quote(firstText(row))}, so it was taken for a statistic over the shots and not for a shot.`,
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

const LONGEST_WORD = 24;
const statisticNamed: Lookup = remembered((text) => {
  const word = fold(text);
  return STATISTICS.has(word) ? "statistic" : BESIDE_STATISTICS.has(word) ? "beside" : undefined;
});

/** What a row that begins with this text may be: a `statistic` for certain, or `beside` one; undefined where it is neither. */
export function statisticIn(text: string): string | undefined {
  const mayBe = text.length <= LONGEST_WORD && !(text.charCodeAt(0) <= 0x39); // most rows begin with a number or a time
  return mayBe ? statisticNamed(text) : undefined;
}

function firstText({ cells }: TableRow): string {
  for (const cell of cells) {
    const text = cell.trim();
    if (text !== "") return text;
  }
  return "";
}
