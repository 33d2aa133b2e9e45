/** The tables of sessions, on disk. */
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import type { DataFiles, Pieces } from "../import/import-files.ts";
import { nameOfPath, pathOfName } from "./path-names.ts";
import { isMissing, reasonOf } from "./system-errors.ts";

/** A table is there but cannot be read. The message names it and says why. */
export class UnreadableDataError extends Error {
  override readonly name = "UnreadableDataError";
}

/** Files of this many bytes and more are read in pieces. */
const LARGE = 4_000_000;

/** Data files named by their paths relative to `cwd`. Reading throws UnreadableDataError. */
export function dataFilesOnDisk(cwd: string): DataFiles {
  return {
    locate: (path, sessionFile) => nameOfPath(resolve(dirname(pathOfName(sessionFile, cwd)), path), cwd),
    async read(file) {
      const path = pathOfName(file, cwd);
      try {
        const { size } = await stat(path);
        return size < LARGE ? await readFile(path) : new FilePieces(path, file, size);
      } catch (error) {
        if (isMissing(error)) return undefined;
        throw unreadable(file, error);
      }
    },
    sha256: (content) => createHash("sha256").update(content).digest("hex"),
  };
}

/** The pieces of a file on disk, and what they hash to. Can be read once. */
class FilePieces implements Pieces {
  readonly size: number;
  readonly #path: string;
  readonly #name: string;
  readonly #hash = createHash("sha256");

  constructor(path: string, name: string, size: number) {
    this.#path = path;
    this.#name = name;
    this.size = size;
  }

  async *[Symbol.asyncIterator](): AsyncGenerator<Uint8Array> {
    try {
      for await (const piece of createReadStream(this.#path, { highWaterMark: 1 << 18 })) {
        this.#hash.update(piece);
        yield piece;
      }
    } catch (error) {
      throw unreadable(this.#name, error);
    }
  }

  sha256(): string {
    return this.#hash.digest("hex");
  }
}

function unreadable(file: string, error: unknown): UnreadableDataError {
  return new UnreadableDataError(`${file} cannot be read: ${reasonOf(error)}.`, { cause: error });
}
