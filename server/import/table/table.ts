/** From the text of a file to a header and rows of cells, each with the line it stands on. */
import { CsvError, parse } from "csv-parse/sync";
import type { Source } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { list, quote, type Report } from "../finding.ts";
import { Header } from "./header.ts";

/** One row. `line` is the line of the file on which it begins, from 1. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface Table {
  readonly header: Header;
  /** The rows under the header, blank ones left out. */
  readonly rows: readonly TableRow[];
}

/** Of separators that fit equally well, which is all of them where there is one column, the first: no number holds it. */
const SEPARATORS = { tab: "\t", semicolon: ";", comma: ",", pipe: "|" } as const;

/** How many lines are searched for the header when it does not stand where the source says. */
const HEADER_SEARCH = 50;

/**
 * Reads a table as RFC 4180 describes it, and a little beyond: the separator is a comma, a semicolon or a tab; lines
 * end in LF, CRLF or CR; quotation marks inside an unquoted cell are text; rows may have any number of cells. What
 * stands above the header is not looked at. Undefined, with one error reported, where the text is no such table.
 * Linear in the length of the text.
 */
export function readTable(text: string, source: Source, report: Report): Table | undefined {
  const binary = whyBinary(text);
  if (binary !== undefined) {
    report({ code: "not-a-table", severity: "error", message: binary });
    return undefined;
  }
  // One kind of line end makes counting lines and splitting records the same thing.
  const lines = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const wanted = wantedHeaders(source);
  const body = fromLine(lines, source.headerRow);
  const { separator, header, found } = likeliestHeader(body, source, wanted);
  if (found === 0 && wanted.length > 0) {
    report({
      code: "not-a-table",
      severity: "error",
      line: source.headerRow,
      message: whyNoHeader(lines, body, header, source, wanted),
    });
    return undefined;
  }
  const records = allRecords(body, separator, source, header, report);
  return records === undefined
    ? undefined
    : { header, rows: rowsUnder(records, separator, source.headerRow, report) };
}

/** Every header the source speaks of, once. */
function wantedHeaders(source: Source): string[] {
  const names = source.columns.map((column) => column.header);
  return [...new Set(source.orderedBy === null ? names : [...names, source.orderedBy])];
}

/** Why the content is not text at all; undefined where it may be. Text holds no NUL. */
function whyBinary(text: string): string | undefined {
  if (text.startsWith("PK\u0003\u0004")) {
    return "This is a workbook or an archive, not a table of text. Export the sheet as CSV and name that file.";
  }
  return text.includes("\0")
    ? "This is no table of text: it holds bytes that no text has. Export the shots as CSV and name that file."
    : undefined;
}

/** The text from the given line on, from 1; empty where there is no such line. */
function fromLine(lines: string, line: number): string {
  let start = 0;
  for (let passed = 1; passed < line; passed++) {
    const end = lines.indexOf("\n", start);
    if (end < 0) return "";
    start = end + 1;
  }
  return lines.slice(start);
}

interface HeaderReading {
  readonly separator: string;
  readonly header: Header;
  /** How many of the wanted headers are in it. */
  readonly found: number;
}

/** The header under the separator the source states, or the one under which most of its columns are found. */
function likeliestHeader(body: string, source: Source, wanted: readonly string[]): HeaderReading {
  const candidates = source.separator === null ? Object.values(SEPARATORS) : [SEPARATORS[source.separator]];
  const readings = candidates.map((separator): HeaderReading => {
    const header = new Header(headerCells(body, separator));
    return { separator, header, found: wanted.filter((name) => header.find(name).length > 0).length };
  });
  return readings.reduce((best, next) => {
    const more = next.found - best.found || next.header.names.length - best.header.names.length;
    return more > 0 ? next : best;
  });
}

function headerCells(body: string, separator: string): readonly string[] {
  try {
    return split(body, separator, 1)[0] ?? [];
  } catch (error) {
    if (error instanceof CsvError) return []; // a quotation mark is never closed: another separator may fit
    throw error;
  }
}

function whyNoHeader(
  lines: string,
  body: string,
  header: Header,
  source: Source,
  wanted: readonly string[],
): string {
  const expected = `Line ${source.headerRow} should hold the column names ${list(wanted)}`;
  const end = body.indexOf("\n");
  const line = end < 0 ? body : body.slice(0, end);
  const there =
    body === ""
      ? "the file ends before it"
      : line.trim() === ""
        ? "it is blank"
        : header.names.length > 1
          ? `it holds ${list(header.names)}`
          : `it reads ${quote(line)}`;
  return `${expected}, but ${there}. ${whereElse(lines, source, wanted)}`;
}

/** Looks for the column names on other lines. */
function whereElse(lines: string, source: Source, wanted: readonly string[]): string {
  let best = { line: 0, found: 0 };
  const candidates = lines.split("\n", HEADER_SEARCH);
  for (const [index, text] of candidates.entries()) {
    const { found } = likeliestHeader(text, source, wanted);
    if (found > best.found) best = { line: index + 1, found };
  }
  return best.found > 0
    ? `Line ${best.line} holds ${best.found === wanted.length ? "them" : `${best.found} of them`}: write \`header row ${best.line}\` in source ${quote(source.name)}.`
    : `Check that this file is the one source ${quote(source.name)} is for.`;
}

/** All records, the header's first; undefined, with an error reported, where a quotation mark is never closed. */
function allRecords(
  body: string,
  separator: string,
  source: Source,
  header: Header,
  report: Report,
): string[][] | undefined {
  try {
    return split(body, separator);
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const before = error.records > 0 ? split(body, separator, error.records) : [];
    const line = source.headerRow + before.reduce((sum, cells) => sum + linesOf(cells), 0);
    const column = header.names[error.column];
    report({
      code: "file-unreadable",
      severity: "error",
      line,
      ...(column === undefined ? {} : { column }),
      message: `The row in line ${line} opens a quotation mark${column === undefined ? "" : ` in column ${quote(column)}`} that is never closed, so where its cells end cannot be told. Close the quotation mark, or take it away.`,
    });
    return undefined;
  }
}

function split(text: string, separator: string, records?: number): string[][] {
  return parse(text, {
    delimiter: separator,
    record_delimiter: "\n",
    relax_column_count: true,
    relax_quotes: true,
    ltrim: true,
    ...(records === undefined ? {} : { to: records }),
  });
}

/** How many lines of the file a record stands on: every line end is inside a quoted cell, or ends the record. */
function linesOf(cells: readonly string[]): number {
  let lines = 1;
  for (const cell of cells) {
    for (let at = cell.indexOf("\n"); at >= 0; at = cell.indexOf("\n", at + 1)) lines++;
  }
  return lines;
}

function rowsUnder(
  records: readonly string[][],
  separator: string,
  headerRow: number,
  report: Report,
): TableRow[] {
  const rows: TableRow[] = [];
  let line = headerRow;
  for (const [index, cells] of records.entries()) {
    const height = linesOf(cells);
    if (index > 0 && cells.some((cell) => cell.trim() !== "")) rows.push({ line, cells });
    // A stray quotation mark swallows everything up to the next one: rows, too.
    const swallowed = height > 1 && cells.some((cell) => cell.includes("\n") && cell.includes(separator));
    if (index > 0 && swallowed) {
      report({
        code: "row-ragged",
        severity: "warning",
        line,
        message: `A quotation mark that opens in line ${line} closes only in line ${line + height - 1}, so these ${plural(height, "line")} were read as one row. If they are several shots, take the quotation mark away.`,
      });
    }
    line += height;
  }
  return rows;
}
