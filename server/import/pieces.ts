/** Files that are read piece by piece, packed or not. */
import { isPacked, unpacked } from "./gunzip.ts";

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

/** Whoever waits for a large table. */
export interface Watcher {
  /** Reading stops with the signal's reason as soon as this is aborted. The platform's AbortSignal is one. */
  readonly signal?: { throwIfAborted(): void } | undefined;
  /** Called after every piece: how many bytes of how many were read of this file. */
  readonly progress?: (file: string, bytes: number, size: number) => void;
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
  return unpackedPieces(watched(content instanceof Uint8Array ? whole(content, "") : content, name, watcher));
}

/** The pieces of what was packed, where it was. @throws DamagedPackingError */
export async function* unpackedPieces(raw: AsyncIterator<Uint8Array, undefined>): AsyncGenerator<Uint8Array> {
  const first = await raw.next();
  if (first.done) return;
  const all = startingWith(first.value, raw);
  if (isPacked(first.value)) yield* unpacked(all);
  else yield* all;
}

/**
 * The pieces, one after the other, while somebody watches. Unlike a generator it goes on when a loop over it was left.
 */
export function watched(
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

export function startingWith(
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

async function* onePiece(content: Uint8Array): AsyncGenerator<Uint8Array> {
  yield content;
}

/** A file that is held, as the only piece of it. */
export function whole(content: Uint8Array, sha256: string): Pieces {
  return {
    [Symbol.asyncIterator]: () => onePiece(content),
    sha256: () => sha256,
    size: content.length,
  };
}
