/** From the files a session points at to its shots: however large they are, packed or not. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { SessionData } from "../../shared/session-data.ts";
import type { FileImport } from "./file-import.ts";
import { DamagedPackingError, isPacked, unpacked } from "./gunzip.ts";
import { SessionImport } from "./import-session.ts";
import { partsOf } from "./parts/table-parts.ts";

/** A file that is too large to be held, piece by piece, as often as it is asked for. */
export interface Pieces extends AsyncIterable<Uint8Array> {
  /** SHA-256 of all pieces in lower-case hexadecimal, once the last one was read. */
  sha256(): string;
  /** In bytes. */
  readonly size: number;
  /** Whether the file is still being written: its last row counts when its line has ended. */
  readonly isGrowing?: boolean;
  /** The bytes from one place up to another, where they can be had without reading what is before. */
  between?(start: number, end: number): Promise<Uint8Array>;
}

/** What reading the tables of a session needs from the world outside. */
export interface DataFiles {
  /** The name under which reports speak of a data file, from its path as the session at `sessionFile` writes it. */
  locate(path: string, sessionFile: string): string;
  /** The bytes of a located file, at once or in pieces, or undefined where there is no such file. */
  read(file: string): Promise<Uint8Array | Pieces | undefined>;
  /** SHA-256 in lower-case hexadecimal. */
  sha256(content: Uint8Array): string;
}

/** Whoever waits for a large table. */
export interface Watcher {
  /** Reading stops with the signal's reason as soon as this is aborted. The platform's AbortSignal is one. */
  readonly signal?: { throwIfAborted(): void } | undefined;
  /** Called after every piece: how many bytes of how many were read of this file. */
  readonly progress?: (file: string, bytes: number, size: number) => void;
}

/**
 * Reads the tables of a session. Holds no more of a file that comes in pieces than one of them, and the session's own shots.
 * @throws the reason of the signal where it is aborted.
 */
export async function importFiles(
  input: ScoringInput,
  dataFiles: DataFiles,
  watcher: Watcher = {},
): Promise<SessionData> {
  const found = await Promise.all(
    input.session.data.map(async ({ path, source, location }) => {
      const file = dataFiles.locate(path, location.file);
      return { file, source, content: await dataFiles.read(file) };
    }),
  );
  const session = new SessionImport(input);
  for (const { file, source, content } of found) {
    const isGrowing = content !== undefined && "isGrowing" in content && content.isGrowing === true;
    const reading = session.open(file, source, { isGrowing });
    if (content === undefined) {
      reading.isMissing();
      reading.end("");
    } else if (content instanceof Uint8Array) {
      const sha256 = dataFiles.sha256(content);
      if (isPacked(content)) await readPieces(whole(content, sha256), reading, watcher);
      else {
        watcher.signal?.throwIfAborted();
        reading.push(content);
        reading.end(sha256);
      }
    } else {
      const parts = await partsOf(content, input.sources.get(source), file, watcher);
      if (parts === undefined) await readPieces(content, reading, watcher);
      else await parts.readInto(reading, watcher);
    }
  }
  return session.data();
}

async function* onePiece(content: Uint8Array): AsyncGenerator<Uint8Array> {
  yield content;
}

function whole(content: Uint8Array, sha256: string): Pieces {
  return {
    [Symbol.asyncIterator]: () => onePiece(content),
    sha256: () => sha256,
    size: content.length,
  };
}

async function readPieces(pieces: Pieces, reading: FileImport, watcher: Watcher): Promise<void> {
  const raw = watched(pieces, reading.path, watcher);
  try {
    for await (const piece of plain(raw)) {
      reading.push(piece);
      if (reading.hasFailed) break;
    }
  } catch (error) {
    if (!(error instanceof DamagedPackingError)) throw error;
    reading.isUnreadable(`The file is packed with gzip, but ${error.message}`);
  }
  while (!(await raw.next()).done); // what is left is part of the file's hash
  if (pieces.isGrowing === true) reading.hasHash(pieces.sha256());
  else reading.end(pieces.sha256());
}

/**
 * The bytes of a file as they were before it was packed, piece by piece, for whoever reads a table without a session.
 * @throws DamagedPackingError, and the reason of the signal where it is aborted.
 */
export function contentOf(
  content: Uint8Array | Pieces,
  name: string,
  watcher: Watcher = {},
): AsyncIterable<Uint8Array> {
  return plain(watched(content instanceof Uint8Array ? whole(content, "") : content, name, watcher));
}

async function* plain(raw: AsyncIterator<Uint8Array, undefined>): AsyncGenerator<Uint8Array> {
  const first = await raw.next();
  if (first.done) return;
  const all = startingWith(first.value, raw);
  if (isPacked(first.value)) yield* unpacked(all);
  else yield* all;
}

/**
 * The pieces, one after the other, while somebody watches. Unlike a generator it goes on when a loop over it was left.
 */
function watched(
  pieces: Pieces,
  name: string,
  { signal, progress }: Watcher,
): AsyncIterator<Uint8Array, undefined> {
  const iterator = pieces[Symbol.asyncIterator]();
  let bytes = 0;
  return {
    async next() {
      const { done, value } = await iterator.next();
      if (done) return { done, value: undefined };
      signal?.throwIfAborted();
      bytes += value.length;
      progress?.(name, bytes, pieces.size);
      return { done: false, value };
    },
  };
}

function startingWith(
  first: Uint8Array,
  rest: AsyncIterator<Uint8Array, undefined>,
): AsyncIterableIterator<Uint8Array, undefined> {
  let isFirst = true;
  return {
    [Symbol.asyncIterator]() {
      return this;
    },
    async next() {
      if (!isFirst) return rest.next();
      isFirst = false;
      return { done: false, value: first };
    },
  };
}
