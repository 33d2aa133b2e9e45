/** From the text of a file to a header and rows of cells, each with the line it stands on, while the text arrives. */
import type { Source } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { type Problem, quote, type Report } from "../finding.ts";
import { type DelimitedReader, LONGEST_RECORD, type TableRecord } from "./delimited.ts";
import { fromLine, likeliestHeader, wantedHeaders, whyNoHeader } from "./find-header.ts";
import { Header } from "./header.ts";
import { JsonReader, type JsonSink, looksLikeJson } from "./json.ts";
import { whyBinary, whyNoTable } from "./no-table.ts";
import { type Parting, recordReader, SEPARATORS } from "./separators.ts";

/** One row. `line` is the line of the file on which it begins, from 1. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** How the lines of a table are read, once its header was found: those of one that is delimited or aligned, or JSON Lines. */
export type Layout = DelimitedLayout | { readonly separator: null; readonly header: Header };

interface DelimitedLayout extends Parting {
  readonly header: Header;
}

/** What becomes of a table that is read. */
export interface TableSink {
  /** The column names, once, before any row. False where the rows are not wanted any more. */
  header(header: Header, form: TableForm): boolean;
  /** A row under the header; blank ones are left out. */
  row(row: TableRow): void;
}

/** In a delimited table a row has a cell for each column; in JSON what is missing has no value. */
export type TableForm = "delimited" | "json";

/** How much of a file is looked at to find the header, unless it ends before; rows wait until then. */
const BEGINNING = 65_536;
/** In how many records of JSON column names are looked for: later ones may have more keys. */
const JSON_HEADER_RECORDS = 1000;

/**
 * Reads a delimited or aligned table, or JSON, whose text is pushed piece by piece. What stands above the header is not looked at. Where
 * the text is no such table, or cannot be read to its end, one error is reported and `failed` is set: what was read until
 * then counts for nothing. Linear; holds the beginning of the file, one piece and one record.
 */
export class TableReader {
  failed = false;
  readonly #source: Source;
  readonly #report: Report;
  readonly #sink: TableSink;
  readonly #beginning: number;
  /** The text so far, while the header is not known. */
  #held = "";
  #isBlank = true;
  #json: JsonReader | undefined;
  #jsonRows: TableRow[] | undefined;
  #delimited: DelimitedReader | undefined;
  #layout: Layout | undefined;

  /** `isGrowing`: a file that is still being written, whose header is taken as soon as its line is complete. */
  constructor(source: Source, report: Report, sink: TableSink, { isGrowing = false } = {}) {
    this.#source = source;
    this.#report = report;
    this.#sink = sink;
    this.#beginning = isGrowing ? 0 : BEGINNING;
  }

  /** That of a table of lines whose header was found; undefined of other JSON. */
  get layout(): Layout | undefined {
    return this.#layout;
  }

  /** Goes on at a line under the header of a table whose layout is known, as if nothing stood above it that was not pushed. */
  goOnAt(line: number, layout: Layout): void {
    this.#delimited?.end();
    this.#json?.end();
    this.#checkBroken();
    if (this.failed) return;
    this.#isBlank = false;
    if (this.#layout === undefined && !this.#takeHeader(layout)) return;
    if (layout.separator === null) this.#json = this.#jsonReader("", { line, names: layout.header.names });
    else this.#delimited = recordReader(layout, line, (record) => this.#takeRecord(record, layout));
  }

  /** The table cannot be read: what was read until now counts for nothing. */
  fail(problem: Problem): void {
    this.failed = true;
    this.#held = "";
    this.#report(problem);
  }

  push(piece: string): void {
    if (this.failed || piece === "") return;
    this.#isBlank &&= piece.replaceAll("\uFEFF", "").trim() === "";
    if (piece.includes("\0")) {
      this.#fail("not-a-table", whyBinary(this.#held + piece));
    } else if (this.#json !== undefined) this.#pushJson(piece);
    else if (this.#delimited !== undefined) this.#pushDelimited(piece);
    else {
      this.#held += piece;
      if (this.#held.length >= this.#beginning) this.#begin(false);
    }
  }

  /** Nothing more will arrive. */
  end(): void {
    if (this.failed) return;
    if (this.#isBlank) {
      this.#fail("file-empty", "The file is empty. Export the shots again, or leave the file out.");
      return;
    }
    if (this.#json === undefined && this.#delimited === undefined) this.#begin(true);
    if (this.failed) return;
    this.#delimited?.end();
    this.#json?.end();
    this.#checkBroken();
    if (this.#json !== undefined) this.#takeJsonHeader();
  }

  #fail(code: "not-a-table" | "file-empty" | "file-unreadable", message: string, place = {}): void {
    this.fail({ code, severity: "error", ...place, message });
  }

  #begin(isLast: boolean): void {
    const text = this.#held.replace(/^\uFEFF/, "");
    const why = whyNoTable(text);
    if (why !== undefined) {
      this.#fail("not-a-table", why);
      return;
    }
    if (looksLikeJson(text)) {
      this.#held = "";
      this.#json = this.#jsonReader(text);
      this.#jsonRows = [];
      this.#pushJson(text);
      return;
    }
    // What follows a CR at the very end decides whether it is a line end of its own.
    if (text.endsWith("\r") && !isLast) return;
    const lines = text.replace(/\r\n?/g, "\n");
    const body = fromLine(lines, this.#source.headerRow);
    const isComplete = body?.includes("\n") === true || lines.length > LONGEST_RECORD;
    if (isComplete || isLast) this.#beginDelimited(lines, body ?? "");
  }

  #beginDelimited(lines: string, body: string): void {
    const source = this.#source;
    const wanted = wantedHeaders(source);
    const layout = likeliestHeader(body, source, wanted);
    const { header, found } = layout;
    if (found === 0 && wanted.length > 0) {
      const beginning = this.#beginning === 0 ? lines : lines.slice(0, this.#beginning);
      const message = whyNoHeader(beginning, header, source, wanted);
      this.#fail("not-a-table", message, { line: source.headerRow });
      return;
    }
    this.#held = "";
    this.#delimited = recordReader(layout, source.headerRow, (record) => {
      if (this.#layout === undefined) this.#takeHeader(layout);
      else this.#takeRecord(record, layout);
    });
    this.#pushDelimited(body);
  }

  #takeHeader(layout: Layout): boolean {
    this.#layout = layout;
    if (!this.#sink.header(layout.header, layout.separator === null ? "json" : "delimited"))
      this.failed = true;
    return !this.failed;
  }

  #pushDelimited(piece: string): void {
    this.#delimited?.push(piece);
    this.#checkBroken();
  }

  #takeRecord({ line, height, cells }: TableRecord, { separator }: Parting): void {
    if (this.failed || isBlankRow(cells)) return;
    this.#sink.row({ line, cells });
    // A stray quotation mark swallows everything up to the next one: rows, too.
    const mark = separator === "spaces" ? "\n" : SEPARATORS[separator];
    if (height > 1 && cells.some((cell) => cell.includes("\n") && cell.includes(mark))) {
      this.#report({
        code: "row-ragged",
        severity: "warning",
        line,
        message: `A quotation mark that opens in line ${line} closes only in line ${line + height - 1}, so these ${plural(height, "line")} were read as one row. If they are several shots, take the quotation mark away.`,
      });
    }
  }

  #checkBroken(): void {
    const broken = this.#delimited?.broken;
    if (this.failed) return;
    if (broken !== undefined) {
      const { line } = broken;
      const column = this.#layout?.header.names[broken.column];
      const inColumn = column === undefined ? "" : ` in column ${quote(column)}`;
      const message =
        broken.reason === "quote-never-closed"
          ? `The row in line ${line} opens a quotation mark${inColumn} that is never closed, so where its cells end cannot be told. Close the quotation mark, or take it away.`
          : `What begins in line ${line} goes on for more than ${LONGEST_RECORD / 1_000_000} million characters without an end. Is a quotation mark never closed there, or is this no table?`;
      this.#fail("file-unreadable", message, { line, ...(column === undefined ? {} : { column }) });
    } else if (this.#json?.broken !== undefined) {
      const { line, why } = this.#json.broken;
      const what = why ?? `what begins in line ${line} does not end, or is more than can be held`;
      const message = `This looks like JSON, but ${what}. Expected is an array of objects, one object on each line, or one with a list of readings for each column.`;
      this.#fail("file-unreadable", message, { line });
    }
  }

  #jsonReader(text: string, from?: ConstructorParameters<typeof JsonReader>[3]): JsonReader {
    const sink: JsonSink = {
      record: (row) => {
        if (this.failed) return;
        if (this.#jsonRows === undefined) {
          if (!isBlankRow(row.cells)) this.#sink.row(row);
          return;
        }
        this.#jsonRows.push(row);
        if (this.#jsonRows.length >= JSON_HEADER_RECORDS) this.#takeJsonHeader();
      },
      unreadable: (line, text) =>
        this.#report({
          code: "row-unreadable",
          severity: "warning",
          line,
          text,
          message: `Line ${line} holds no shot as JSON has one there, an object or a list as long as the names, so there is none to read: ${quote(text)}.`,
        }),
    };
    return new JsonReader(text, this.#source.decimal, sink, from);
  }

  #pushJson(piece: string): void {
    this.#json?.push(piece);
    if (this.#beginning === 0 && this.#json !== undefined && this.#json.names.length > 0)
      this.#takeJsonHeader();
    this.#checkBroken();
  }

  #takeJsonHeader(): void {
    const rows = this.#jsonRows;
    if (rows === undefined || this.failed) return;
    this.#jsonRows = undefined;
    const header = new Header([...(this.#json?.names ?? [])]);
    if (this.#json?.isOfLines === true) this.#layout = { separator: null, header };
    if (!this.#sink.header(header, "json")) this.failed = true;
    else for (const row of rows) if (!isBlankRow(row.cells)) this.#sink.row(row);
  }
}

function isBlankRow(cells: readonly string[]): boolean {
  for (const cell of cells) if (cell.trim() !== "") return false;
  return true;
}
