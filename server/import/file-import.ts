/** One table of a session, from its bytes to shots that know everything but their block. */
import type { ScoringInput, Source } from "../../shared/plan-model.ts";
import type { DataFile, DataFinding } from "../../shared/session-data.ts";
import { type Hit, HitReader } from "./cells/hits.ts";
import { inOrder } from "./cells/order.ts";
import { bindColumns, type Columns } from "./columns.ts";
import { type Problem, quote, type Report } from "./finding.ts";
import { OwnRows } from "./own-rows.ts";
import { TextDecoding } from "./table/decode.ts";
import { ShotRows } from "./table/rows.ts";
import { type Layout, TableReader, type TableRow } from "./table/table.ts";

/** No session has more: it would take about half a gigabyte. */
const MOST_SHOTS = 1_000_000;

/** One table while it is read. */
export class FileImport {
  readonly path: string;
  readonly #input: ScoringInput;
  readonly #report: Report;
  readonly #source: Source | undefined;
  readonly #decoding = new TextDecoding();
  readonly #table: TableReader | undefined;
  #columns: Columns | undefined;
  #rows: ShotRows | undefined;
  #own: OwnRows | undefined;
  #reader: HitReader | undefined;
  #hits: Hit[] = [];
  #kept = 0;
  /** Whether there is something to read; whether there is a file. */
  #isThere = true;
  #isListed = true;
  #hasEnded = false;
  #sha256 = "";

  constructor(
    path: string,
    source: string,
    input: ScoringInput,
    report: Report,
    growth: { readonly isGrowing?: boolean } = {},
  ) {
    this.path = path;
    this.#input = input;
    this.#report = report;
    this.#source = input.sources.get(source);
    if (this.#source === undefined) this.#fail("file-unreadable", whyNoSource(source, input));
    else this.#table = this.#tableReader(this.#source, growth);
  }

  /** There is no such file. */
  isMissing(): void {
    this.#isThere = false;
    this.#isListed = false;
    if (this.#source === undefined) return;
    this.#fail(
      "file-missing",
      `There is no file ${quote(this.path)}. Check the path that session ${quote(this.#input.session.name)} states: it counts from the folder the session's own file is in.`,
    );
  }

  /** The file was found, but cannot be unpacked or read any further. `why` is a sentence. */
  isUnreadable(why: string): void {
    this.#isThere = false;
    this.#fail("file-unreadable", why);
  }

  /** Whether nothing more of the file is wanted, since an error was reported. */
  get hasFailed(): boolean {
    return this.#table === undefined || this.#table.failed;
  }

  push(content: Uint8Array | string): void {
    if (this.hasFailed) return;
    this.#table?.push(typeof content === "string" ? content : this.#decoding.push(content));
  }

  /** Goes on at a line of a delimited table under the header: what stands before it, and was not pushed, are others' shots. */
  goOnAt(line: number, layout: Layout): void {
    this.#table?.goOnAt(line, layout);
    this.#rows?.end();
  }

  /** Whether so many rows that begin with this one, and have its cells in the columns that part the table, are to be pushed. */
  wants(row: TableRow, rows: number): boolean {
    return this.#own?.wants(row, rows) ?? false;
  }

  /** So many rows like this, of which nobody can tell whose it is, are not pushed since enough of them were. */
  skipLike(row: TableRow, rows: number): void {
    this.#own?.skipLike(row, rows);
  }

  /** The table cannot be read to its end. */
  fails(problem: Problem): void {
    if (!this.hasFailed) this.#table?.fail(problem);
  }

  /** What was read so far has this SHA-256; more may come. */
  hasHash(sha256: string): void {
    this.#sha256 = sha256;
  }

  /** Nothing more will come. `sha256` is that of the file as stored. */
  end(sha256: string): void {
    this.hasHash(sha256);
    this.#hasEnded = true;
    if (!this.#isThere) return;
    this.#table?.push(this.#decoding.end());
    this.#table?.end();
    this.#rows?.end();
  }

  /** The session's shots in the order they were hit; none where the file cannot be read. */
  hits(report: Report): Hit[] {
    const source = this.#source;
    this.#kept = 0;
    if (source === undefined || !this.#isThere || this.hasFailed || this.#own === undefined) return [];
    this.#reader?.reportUnknown(report);
    const others = this.#own.others;
    const isOwn = this.#own.decide();
    const own = this.#hits.filter(({ membership }) => isOwn(membership));
    if (!this.#own.reportOn(own.length, report)) return [];
    if (own.length === 0 && others === 0 && this.#hasEnded) {
      report({ code: "file-empty", severity: "error", message: whyNoShots(source) });
    }
    this.#kept = own.length;
    const order = this.#columns?.order ?? null;
    return order === null ? own : inOrder(own, order.header, source, report);
  }

  /** Undefined where there is no such file. */
  get summary(): DataFile | undefined {
    if (!this.#isListed) return undefined;
    const file = { file: this.path, sha256: this.#sha256, shots: this.#kept };
    const others = this.#own?.others ?? 0;
    return others === 0 ? file : { ...file, others };
  }

  /** However little a file is packed, or how long it goes on: what it holds must not fill the memory. */
  #isTooMuch(): void {
    this.#hits = [];
    this.fails({
      code: "file-unreadable",
      severity: "error",
      message: `The file holds more than ${MOST_SHOTS / 1_000_000} million shots of session ${quote(this.#input.session.name)}, which is more than anybody hits in one. Where it is a table of several players or days, say which columns tell: \`column "…" is player\`, \`column "…" is date\`.`,
    });
  }

  #fail(code: DataFinding["code"], message: string): void {
    this.#report({ code, severity: "error", message });
  }

  #tableReader(source: Source, growth: { readonly isGrowing?: boolean }): TableReader {
    const input = this.#input;
    const report = this.#report;
    const header: ConstructorParameters<typeof TableReader>[2]["header"] = (header, form) => {
      const columns = bindColumns(header, source, input.player, report);
      if (columns === undefined) return false;
      const context = { columns, source, input, file: this.path, form, names: header.names };
      const reader = new HitReader(context, report);
      const own = new OwnRows(columns, source, input, report);
      this.#columns = columns;
      this.#reader = reader;
      this.#own = own;
      this.#rows = new ShotRows(header, columns, report, (row) => {
        const membership = own.membership(row);
        const hit = membership === undefined ? undefined : reader.read(row, membership);
        if (hit === undefined) return;
        if (this.#hits.length < MOST_SHOTS) this.#hits.push(hit);
        else this.#isTooMuch();
      });
      return true;
    };
    return new TableReader(source, report, { header, row: (row) => this.#rows?.push(row) }, growth);
  }
}

function whyNoSource(name: string, { session }: ScoringInput): string {
  return `There is no source ${quote(name)} that says how to read this file. Declare it, or name another in session ${quote(session.name)}.`;
}

function whyNoShots({ headerRow }: Source): string {
  return `The file has column names in line ${headerRow}, but no shots under them.`;
}
