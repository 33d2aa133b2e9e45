/** The tables of sessions, on disk. */
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import type { DataFiles } from "../scoring/run-session.ts";
import { nameOfPath, pathOfName } from "./path-names.ts";
import { isMissing, reasonOf } from "./system-errors.ts";

/** A table is there but cannot be read. The message names it and says why. */
export class UnreadableDataError extends Error {
  override readonly name = "UnreadableDataError";
}

/** Data files named by their paths relative to `cwd`. `read` throws UnreadableDataError. */
export function dataFilesOnDisk(cwd: string): DataFiles {
  return {
    locate: (path, sessionFile) => nameOfPath(resolve(dirname(pathOfName(sessionFile, cwd)), path), cwd),
    async read(file) {
      try {
        return await readFile(pathOfName(file, cwd));
      } catch (error) {
        if (isMissing(error)) return undefined;
        throw new UnreadableDataError(`${file} cannot be read: ${reasonOf(error)}.`);
      }
    },
    sha256: (content) => createHash("sha256").update(content).digest("hex"),
  };
}
