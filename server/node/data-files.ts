/** The tables of sessions, on disk. */
import { createReadStream, readFileSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import type { DataFiles } from "../import/import-files.ts";
import type { Pieces } from "../import/pieces.ts";
import { nameOfPath, pathOfName } from "./path-names.ts";
import { isMissing, reasonOf } from "./system-errors.ts";
import { UnreadableDataError } from "./unreadable-data-error.ts";

/** Files of this many bytes and more are read in pieces. */
const LARGE = 1_000_000;

/**
 * Data files named by their paths relative to `cwd`. A large one that has not changed is the same object again, so that what
 * was found out about it stays known. Reading throws UnreadableDataError.
 */
export function dataFilesOnDisk(cwd: string): DataFiles {
  const large = new Map<string, FilePieces>();
  return {
    locate: (path, sessionFile) => nameOfPath(resolve(dirname(pathOfName(sessionFile, cwd)), path), cwd),
    async read(file) {
      const path = pathOfName(file, cwd);
      try {
        const { size, mtimeMs } = statSync(path);
        if (size < LARGE) return readFileSync(path);
        const before = large.get(path);
        if (before?.size === size && before.changed === mtimeMs) return before;
        const pieces = new FilePieces(path, file, size, mtimeMs);
        large.set(path, pieces);
        return pieces;
      } catch (error) {
        if (isMissing(error)) return undefined;
        throw unreadable(file, error);
      }
    },
    // Loading Node's own hashes and promised files takes longer than this of a table with a lesson's shots.
    sha256: (content) => bytesToHex(sha256(content)),
  };
}

/** The pieces of a file on disk, and what they hash to. */
class FilePieces implements Pieces {
  readonly size: number;
  /** When, in milliseconds since 1970. */
  readonly changed: number;
  readonly #path: string;
  readonly #name: string;
  #sha256 = "";

  constructor(path: string, name: string, size: number, changed: number) {
    this.#path = path;
    this.#name = name;
    this.size = size;
    this.changed = changed;
  }

  async *[Symbol.asyncIterator](): AsyncGenerator<Uint8Array> {
    const { createHash } = await import("node:crypto");
    const hash = createHash("sha256");
    try {
      for await (const piece of createReadStream(this.#path, { highWaterMark: 1 << 18 })) {
        hash.update(piece);
        yield piece;
      }
    } catch (error) {
      throw unreadable(this.#name, error);
    }
    this.#sha256 = hash.digest("hex");
  }

  sha256(): string {
    return this.#sha256;
  }

  async between(start: number, end: number): Promise<Uint8Array> {
    const { open } = await import("node:fs/promises");
    try {
      const file = await open(this.#path);
      try {
        const { buffer, bytesRead } = await file.read(new Uint8Array(end - start), 0, end - start, start);
        return buffer.subarray(0, bytesRead);
      } finally {
        await file.close();
      }
    } catch (error) {
      throw unreadable(this.#name, error);
    }
  }
}

function unreadable(file: string, error: unknown): UnreadableDataError {
  return new UnreadableDataError(`${file} cannot be read: ${reasonOf(error)}.`, { cause: error });
}
