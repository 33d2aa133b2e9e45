/** From the tables of a session to its shots, all at once or while the tables are read or written. */
import type { Instrument, ScoringInput, Source } from "../../shared/plan-model.ts";
import { plural } from "../../shared/plural.ts";
import type { DataFile, DataFinding, SessionData, Shot } from "../../shared/session-data.ts";
import { assign } from "./assignment/assign.ts";
import { type Hit, HitReader } from "./cells/hits.ts";
import { inOrder } from "./cells/order.ts";
import { bindColumns, type Columns } from "./columns.ts";
import { deriveCategories, namings } from "./derive/categories.ts";
import { disagreements } from "./derive/consistency.ts";
import { derive, formulas } from "./derive/derive.ts";
import { reportDisagreement } from "./derive/report-disagreements.ts";
import { Findings, quote, type Report } from "./finding.ts";
import { OwnRows } from "./own-rows.ts";
import { TextDecoding } from "./table/decode.ts";
import { ShotRows } from "./table/rows.ts";
import { TableReader } from "./table/table.ts";

/** A table as it was found where the session points. */
export interface ImportedFile {
  /** How findings and shots call the file. */
  readonly path: string;
  /** Name of the source that reads it. */
  readonly source: string;
  /** Bytes as stored, or text; undefined where there is no such file. */
  readonly content: Uint8Array | string | undefined;
  /** SHA-256 of the bytes, in hexadecimal digits. */
  readonly sha256: string;
}

/**
 * Reads the tables of a session, in the order of its `data` lines. Whatever they hold there is a result: what cannot be
 * read is reported and left unknown, and a file that cannot be read at all is one error, contributes no shots, and keeps no
 * other from being read. The shots stand in the order they were hit, file after file. Linear in cells, but for sorting
 * where the source names a column to order by.
 */
export function importSession(input: ScoringInput, files: readonly ImportedFile[]): SessionData {
  const session = new SessionImport(input);
  for (const { path, source, content, sha256 } of files) {
    const file = session.open(path, source);
    if (content === undefined) file.isMissing();
    else file.push(content);
    file.end(sha256);
  }
  return session.data();
}

/** Reads the tables of a session piece by piece, one after the other. Holds the session's own shots and one piece. */
export class SessionImport {
  readonly #input: ScoringInput;
  readonly #findings = new Findings();
  readonly #files: FileImport[] = [];

  constructor(input: ScoringInput) {
    this.#input = input;
  }

  /**
   * Begins the next table. `path` is how findings and shots call it, `source` the name of the source that reads it.
   * `isGrowing`: it is still being written, and its last row counts when its line has ended.
   */
  open(path: string, source: string, growth: { readonly isGrowing?: boolean } = {}): FileImport {
    const file = new FileImport(path, source, this.#input, this.#findings.about(path), growth);
    this.#files.push(file);
    return file;
  }

  /** The session as far as its tables were read. May be asked for again when more was read. */
  data(): SessionData {
    const input = this.#input;
    const findings = this.#findings.copy();
    const hits = this.#files.flatMap((file) => file.hits(findings.about(file.path)));
    const paths = this.#files.map(({ path }) => path);
    const { blocks, assignment } = assign(hits, input, paths);
    const complete = completer(input, findings);
    const shots = hits.map((hit, place) => complete(hit, blocks[place] ?? null));
    const unassigned = Map.groupBy(
      shots.filter(({ block }) => block === null),
      ({ row }) => row.file,
    );
    for (const [file, shots] of unassigned) reportUnassigned(shots, input, findings.about(file));
    return {
      files: this.#files.flatMap((file) => file.summary ?? []),
      shots,
      assignment,
      findings: findings.list(),
    };
  }
}

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

  #fail(code: DataFinding["code"], message: string): void {
    this.#report({ code, severity: "error", message });
  }

  #tableReader(source: Source, growth: { readonly isGrowing?: boolean }): TableReader {
    const input = this.#input;
    const report = this.#report;
    const header: ConstructorParameters<typeof TableReader>[2]["header"] = (header, form) => {
      const columns = bindColumns(header, source, input.player, report);
      if (columns === undefined) return false;
      const context = { columns, source, input, file: this.path, form, width: header.names.length };
      const reader = new HitReader(context, report);
      const own = new OwnRows(columns, source, input, report);
      this.#columns = columns;
      this.#reader = reader;
      this.#own = own;
      this.#rows = new ShotRows(header, columns, report, (row) => {
        const membership = own.membership(row);
        const hit = membership === undefined ? undefined : reader.read(row, membership);
        if (hit !== undefined) this.#hits.push(hit);
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

/** Makes a shot of what a row holds: what follows from its readings is added, what does not fit is reported. */
function completer(input: ScoringInput, findings: Findings): (hit: Hit, block: string | null) => Shot {
  const derivable = formulas(input.metrics.values());
  const naming = namings(input.metrics.values(), input.player);
  return (hit, block) => {
    const { row, club, time, excluded } = hit;
    for (const disagreement of disagreements(hit.values, marginsOf(hit, input.instrument), derivable)) {
      reportDisagreement(disagreement, row.line, input, findings.about(row.file));
    }
    const values = { ...hit.values };
    const categories = { ...hit.categories };
    const derived = derive(values, derivable);
    derived.push(...deriveCategories(categories, { values, club }, naming));
    return { row, values, categories, derived, club, time, block, excluded };
  };
}

/** Rounding, and twice the standard uncertainty of the instrument, which hardly ever is exceeded. */
function marginsOf({ roundings, club }: Hit, instrument: Instrument | null): Record<string, number> {
  const margins = { ...roundings };
  for (const { metric, random, systematic, clubs } of instrument?.uncertainties ?? []) {
    const margin = margins[metric];
    if (margin === undefined || (clubs.length > 0 && !clubs.includes(club ?? ""))) continue;
    margins[metric] = margin + 2 * Math.sqrt(random * random + systematic * systematic);
  }
  return margins;
}

function reportUnassigned(shots: readonly Shot[], { session }: ScoringInput, report: Report): void {
  const [first] = shots;
  if (first === undefined) return;
  const { line } = first.row;
  report({
    code: "shots-unassigned",
    severity: "warning",
    line,
    message: `${plural(shots.length, "shot")}, the first in line ${line}, ${shots.length === 1 ? "belongs" : "belong"} to no block and ${shots.length === 1 ? "is" : "are"} not scored. Where a block starts there, say so in session ${quote(session.name)}: \`block … from row ${line}\`.`,
  });
}
