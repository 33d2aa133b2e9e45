/**
 * A large table of many players, days and sessions, of which each session wants its own rows. Whoever reads it first reads
 * all of it. Who comes second finds out where the rows of everybody stand, so that they and all others read only their own.
 */
import type { Source } from "../../../shared/plan-model.ts";
import type { FileImport } from "../file-import.ts";
import type { Problem } from "../finding.ts";
import { DamagedPackingError, isPacked } from "../gunzip.ts";
import { type Pieces, startingWith, unpackedPieces, type Watcher, watched } from "../pieces.ts";
import { decodingFrom } from "../table/decode.ts";
import type { Layout, TableRow } from "../table/table.ts";
import { PartsReader } from "./parts-reader.ts";
import { UnpackedTable } from "./unpacked-table.ts";

/** The rows that have the same in every column that parts the table. */
export interface Part {
  /** The first of them, with the cells of those columns only. */
  readonly row: TableRow;
  /** How many there are, but for those that every session reads. */
  rows: number;
  /** How many of them are in no run: nobody can tell whose they are, and those before are enough to say so. */
  spared: number;
  /** The runs of lines they stand in, by their numbers from the top of the table. */
  readonly runs: number[];
}

/** Where what stands in a table. Every line under the header is in a run, which ends where the next one begins. */
export interface Places {
  /** Undefined where the header was not found. */
  readonly layout: Layout | undefined;
  /** The label of UTF-16, or of an encoding that contains ASCII. */
  readonly encoding: string;
  readonly parts: readonly Part[];
  /** The runs that every session reads. */
  readonly common: readonly number[];
  /** Line and place in bytes of the beginning of each run. */
  readonly lines: readonly number[];
  readonly starts: readonly number[];
  /** Why the table cannot be read to its end. */
  readonly failure: Problem | undefined;
}

type Parted = Pick<Pieces, "sha256" | "size"> & Required<Pick<Pieces, "between">>;

type Known = "read once" | Promise<TableParts | undefined>;

/** Of the files that are known, by what of a source decides how rows are told apart. */
const known = new WeakMap<Pieces, Map<string, Known>>();

/**
 * The parts of a table, where it has some, and was read before. Undefined where it is to be read as a whole: it is small,
 * still being written, JSON that is not of lines, not parted by columns, or packed and holds more than can be kept.
 * @throws the reason of the watcher's signal where it is aborted
 */
export async function partsOf(
  pieces: Pieces,
  source: Source | undefined,
  file: string,
  watcher: Watcher,
): Promise<TableParts | undefined> {
  if (source === undefined || !isParted(source) || !canBeParted(pieces)) return undefined;
  const tables = known.get(pieces) ?? new Map<string, Known>();
  known.set(pieces, tables);
  const key = JSON.stringify({ ...source, name: "", location: null });
  for (;;) {
    const found = tables.get(key);
    if (found === undefined) {
      tables.set(key, "read once");
      return undefined;
    }
    if (found === "read once") {
      const finding = findParts(pieces, source, file, watcher);
      tables.set(key, finding);
      finding.catch(() => tables.set(key, "read once"));
      return finding;
    }
    try {
      return await found;
    } catch {
      watcher.signal?.throwIfAborted(); // else somebody else was told to stop
    }
  }
}

function isParted({ columns }: Source): boolean {
  return columns.some(({ content: { kind } }) => kind === "player" || kind === "date" || kind === "session");
}

function canBeParted(pieces: Pieces): pieces is Pieces & Parted {
  return pieces.between !== undefined && pieces.isGrowing !== true;
}

async function findParts(
  pieces: Pieces & Parted,
  source: Source,
  file: string,
  watcher: Watcher,
): Promise<TableParts | undefined> {
  const reader = new PartsReader(source);
  const raw = watched(pieces, file, watcher);
  const first = await raw.next();
  if (first.done) return undefined;
  const unpacked = isPacked(first.value) ? new UnpackedTable(pieces) : undefined;
  try {
    for await (const piece of unpackedPieces(startingWith(first.value, raw))) {
      reader.push(piece);
      unpacked?.push(piece);
      if (reader.isHopeless || unpacked?.isTooMuch === true) return undefined;
    }
  } catch (error) {
    if (error instanceof DamagedPackingError) return undefined; // whoever reads it says so
    throw error;
  }
  const places = reader.end();
  return places === undefined ? undefined : TableParts.of(unpacked ?? pieces, places);
}

/** Bytes that are read at once, and as many of what every session reads are kept. */
const PIECE = 1 << 18;
const MOST_KEPT = 1 << 22;
/** Bytes that are read beyond what is asked for: what is wanted next is often near. */
const AHEAD = 1 << 16;

export class TableParts {
  readonly #pieces: Parted;
  readonly #places: Places;
  readonly #sha256: string;
  /** The bytes of runs that every session reads, by where they begin. */
  readonly #kept = new Map<number, Uint8Array>();

  private constructor(pieces: Parted, places: Places) {
    this.#pieces = pieces;
    this.#places = places;
    this.#sha256 = pieces.sha256();
  }

  static async of(pieces: Parted, places: Places): Promise<TableParts> {
    const parts = new TableParts(pieces, places);
    await parts.#keepCommon();
    return parts;
  }

  /**
   * Reads for a session what it needs of the table: everything is found in it that is found where all of it is read. Linear in
   * the session's rows and the parts of the table.
   * @throws the reason of the watcher's signal where it is aborted
   */
  async readInto(reading: FileImport, { signal }: Watcher): Promise<void> {
    const { layout, parts, common, lines, failure } = this.#places;
    if (layout !== undefined) reading.goOnAt(lines[0] ?? 1, layout);
    const wanted = parts.filter(({ row, rows }) => reading.wants(row, rows));
    const bytesOf = this.#windowed();
    for (const stretch of stretches([...common, ...wanted.flatMap(({ runs }) => runs)])) {
      if (layout === undefined || reading.hasFailed) break;
      reading.goOnAt(lines[stretch.first] ?? 1, layout);
      const decode = decodingFrom(this.#places.encoding);
      const end = this.#endOf(stretch.last);
      for (let at = this.#startOf(stretch.first); at < end; at += PIECE) {
        signal?.throwIfAborted();
        reading.push(decode(await bytesOf(at, Math.min(at + PIECE, end))));
      }
    }
    if (failure !== undefined) {
      if (layout !== undefined) reading.goOnAt(failure.line ?? 1, layout);
      reading.fails(failure);
    }
    reading.end(this.#sha256);
    for (const { row, spared } of wanted) if (spared > 0) reading.skipLike(row, spared);
  }

  async #keepCommon(): Promise<void> {
    const bytesOf = this.#windowed();
    let left = MOST_KEPT;
    for (const run of this.#places.common) {
      const [start, end] = [this.#startOf(run), this.#endOf(run)];
      left -= end - start;
      if (end - start <= PIECE && left >= 0) this.#kept.set(start, (await bytesOf(start, end)).slice());
    }
  }

  #startOf(run: number): number {
    return this.#places.starts[run] ?? this.#pieces.size;
  }

  #endOf(run: number): number {
    return this.#startOf(run + 1);
  }

  /** The bytes of the file from one place up to another, of which the last that were read are at hand. */
  #windowed(): (start: number, end: number) => Promise<Uint8Array> {
    const { size } = this.#pieces;
    let from = 0;
    let bytes: Uint8Array = new Uint8Array();
    return async (start, end) => {
      const kept = this.#kept.get(start);
      if (kept?.length === end - start) return kept;
      if (start < from || end > from + bytes.length) {
        bytes = await this.#pieces.between(start, Math.min(Math.max(end, start + AHEAD), size));
        from = start;
      }
      return bytes.subarray(start - from, end - from);
    };
  }
}

/** Runs that stand one after the other, from the top of the table. */
function* stretches(runs: readonly number[]): Generator<{ first: number; last: number }> {
  const sorted = Float64Array.from(runs).sort();
  let at = 0;
  while (at < sorted.length) {
    const first = sorted[at] ?? 0;
    let last = first;
    while (sorted[at + 1] === last + 1) {
      at++;
      last++;
    }
    at++;
    yield { first, last };
  }
}
