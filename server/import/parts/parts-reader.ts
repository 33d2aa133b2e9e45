/** Finds out where the rows of each player, day and session stand in a table. */
import type { Source } from "../../../shared/plan-model.ts";
import { type BlankTest, blankTest } from "../cells/blank.ts";
import { parseDate } from "../cells/date.ts";
import { bindColumns, type Columns } from "../columns.ts";
import { MOST_LISTED, type Problem } from "../finding.ts";
import { TextDecoding } from "../table/decode.ts";
import type { Header } from "../table/header.ts";
import { ShotRows } from "../table/rows.ts";
import { type TableForm, TableReader, type TableRow } from "../table/table.ts";
import { LineStarts } from "./line-starts.ts";
import type { Part, Places } from "./table-parts.ts";

/** A table that falls into more parts is hardly one of sessions; noting them would take as much as the table. */
const MOST_PARTS = 50_000;

/** What a run of lines is, where it is no part of somebody. */
type Kind = Part | "for all" | "for nobody";

type DateOrder = Exclude<Parameters<typeof parseDate>[1], undefined>;

const ANYBODY = { name: "", hand: "right" } as const;

/**
 * Reads a table piece by piece. What decides about other rows, or is to be reported to every session, is for all: the first
 * shot, statistics over shots, and rows that a stray quotation mark has made one.
 */
export class PartsReader {
  /** Parts cannot be told, or are too many. */
  isHopeless = false;
  readonly #source: Source;
  readonly #isBlank: BlankTest;
  readonly #decoding = new TextDecoding();
  readonly #lineStarts = new LineStarts();
  readonly #table: TableReader;
  #rows: ShotRows | undefined;
  #columns: Pick<Columns, "players" | "sessions" | "dates"> | undefined;
  readonly #parts = new Map<string, Part>();
  readonly #common: number[] = [];
  readonly #lines: number[] = [];
  readonly #starts: number[] = [];
  #failure: Problem | undefined;
  #hasShot = false;
  #hasCarriageReturn = false;
  /** Whose the last shot is. */
  #shotOf: Part | undefined;
  /** The last row, of which more may be found out, and the run before it. */
  #last: { readonly line: number; kind: Kind } | undefined;
  #running: Kind | undefined;
  #dateRead: { text: string; order: DateOrder; key: string } = { text: "", order: null, key: "" };

  constructor(source: Source) {
    this.#source = source;
    this.#isBlank = blankTest(source);
    const sink = {
      header: (header: Header, form: TableForm) => this.#takeHeader(header, form),
      row: (row: TableRow) => this.#takeRow(row),
    };
    this.#table = new TableReader(source, (problem) => this.#note(problem), sink);
  }

  push(bytes: Uint8Array): void {
    const before = this.#decoding.encoding;
    const text = this.#decoding.push(bytes);
    const { encoding } = this.#decoding;
    // Lines were counted in bytes until then: a piece was so short that nothing could be told from it.
    if (encoding.startsWith("utf-16") && encoding !== before && this.#lineStarts.size > 0)
      this.isHopeless = true;
    this.#lineStarts.push(bytes, encoding);
    this.#table.push(text);
    this.#hasCarriageReturn ||= text.includes("\r");
    if (this.#last !== undefined) this.#lineStarts.forgetBefore(this.#last.line);
  }

  /** Nothing more will come. Undefined where parts cannot be told. */
  end(): Places | undefined {
    this.#table.push(this.#decoding.end());
    this.#table.end();
    this.#rows?.end();
    this.#settle();
    // In JSON a carriage return ends no line.
    const areLinesOthers = this.#table.layout?.separator === null && this.#hasCarriageReturn;
    if (this.isHopeless || areLinesOthers) return undefined;
    return {
      layout: this.#table.layout,
      encoding: this.#decoding.encoding,
      parts: [...this.#parts.values()],
      common: this.#common,
      lines: this.#lines,
      starts: this.#starts,
      failure: this.#failure,
    };
  }

  #takeHeader(header: Header, form: TableForm): boolean {
    if (form === "json" && this.#table.layout === undefined) this.isHopeless = true;
    const columns = bindColumns(header, this.#source, ANYBODY, () => {});
    if (columns === undefined || this.isHopeless) return false;
    this.#columns = columns;
    this.#rows = new ShotRows(
      header,
      columns,
      () => {},
      (row) => {
        this.#shotOf = this.#partOf(row);
      },
    );
    return true;
  }

  #takeRow(row: TableRow): void {
    this.#settle();
    const is = this.#rows?.push(row);
    const isDecisive = !this.#hasShot || is === "held";
    this.#hasShot ||= is === "shot";
    const kind = isDecisive ? "for all" : is === "nothing" ? "for nobody" : this.#shotOf;
    if (kind !== undefined) this.#last = { line: row.line, kind };
  }

  /** What is reported of a row comes after it. */
  #note(problem: Problem): void {
    if (problem.severity === "error") this.#failure = problem;
    else if (problem.code === "row-unreadable")
      this.isHopeless = true; // it is no row that could be read again
    else if (this.#last !== undefined) this.#last.kind = "for all";
  }

  #settle(): void {
    const { line, kind } = this.#last ?? {};
    this.#last = undefined;
    if (line === undefined || kind === undefined) return;
    if (typeof kind === "string") this.#run(kind, line);
    else {
      kind.rows++;
      const isSpared = kind.rows > MOST_LISTED && this.#isUnclear(kind.row);
      if (isSpared) kind.spared++;
      this.#run(isSpared ? "for nobody" : kind, line);
    }
  }

  #run(kind: Kind, line: number): void {
    if (kind === this.#running) return;
    this.#running = kind;
    const number = this.#lines.push(line) - 1;
    this.#starts.push(this.#lineStarts.startOf(line));
    if (kind === "for all") this.#common.push(number);
    else if (kind !== "for nobody") kind.runs.push(number);
  }

  #partOf({ line, cells }: TableRow): Part {
    const key = this.#keyOf(cells);
    let part = this.#parts.get(key);
    if (part === undefined) {
      part = { row: { line, cells: this.#partingCells(cells) }, rows: 0, spared: 0, runs: [] };
      this.#parts.set(key, part);
      this.isHopeless ||= this.#parts.size > MOST_PARTS;
    }
    return part;
  }

  #keyOf(cells: readonly string[]): string {
    const { players = [], sessions = [], dates = [] } = this.#columns ?? {};
    const names = [...players, ...sessions].map(({ index }) => (cells[index] ?? "").trim());
    const days = dates.map(({ index, content }) => this.#dateKey((cells[index] ?? "").trim(), content.order));
    return [...names, ...days].join("\n");
  }

  /** A date may be written in several ways, as with the time of day. */
  #dateKey(text: string, order: DateOrder): string {
    if (text !== this.#dateRead.text || order !== this.#dateRead.order) {
      const read = this.#isBlank(text) ? undefined : parseDate(text, order);
      const key = read === undefined ? "" : `${read.dayFirst ?? ""}|${read.monthFirst ?? ""}`;
      this.#dateRead = { text, order, key };
    }
    return this.#dateRead.key;
  }

  /** Copies, since a cell holds on to all the text that was read with it. */
  #partingCells(cells: readonly string[]): string[] {
    const { players = [], sessions = [], dates = [] } = this.#columns ?? {};
    const parting: string[] = [];
    for (const { index } of [...players, ...sessions, ...dates])
      parting[index] = [...(cells[index] ?? "")].join("");
    return parting;
  }

  /** Whether nobody can tell whose such a row is, unless its other cells say that it is another's. */
  #isUnclear({ cells }: TableRow): boolean {
    const { players = [], sessions = [], dates = [] } = this.#columns ?? {};
    return (
      [...players, ...sessions].some(({ index }) => this.#isBlank((cells[index] ?? "").trim())) ||
      dates.some(({ index, content }) => this.#dateKey((cells[index] ?? "").trim(), content.order) === "")
    );
  }
}
