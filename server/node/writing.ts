/** Writing to files whose names people gave. */
import {
  accessSync,
  chmodSync,
  constants,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname } from "node:path";
import { PathError } from "./path-error.ts";
import { nameOfPath } from "./path-names.ts";
import { isMissing, isSystemError, reasonOf } from "./system-errors.ts";

/** What `write` returns, which writes to the file at this absolute path. @throws PathError where the system refuses. */
export function writing<Result>(path: string, cwd: string, write: () => Result): Result {
  try {
    return write();
  } catch (error) {
    if (!isSystemError(error)) throw error;
    const name = nameOfPath(path, cwd);
    const reason = isMissing(error)
      ? `there is no folder ${nameOfPath(dirname(path), cwd)}. Create it, or give another name`
      : reasonOf(error);
    throw new PathError(`${name} cannot be written: ${reason}.`);
  }
}

/** A file that is on its way, beside the one it becomes. */
export function unfinished(path: string): string {
  return `${path}.unfinished`;
}

/**
 * Writes the whole text to the file at this absolute path, or changes nothing: a full disk takes no plan away. A link
 * stays one, and so do the permissions of a file that is there; a new one has `mode`. @throws PathError
 */
export function writeWhole(path: string, text: string, cwd: string, mode = 0o666): void {
  writing(path, cwd, () => {
    const old = statSync(path, { throwIfNoEntry: false });
    if (old !== undefined && !old.isFile()) return writeFileSync(path, text); // a device is not replaced
    const target = old === undefined ? path : realpathSync(path);
    if (old !== undefined) accessSync(target, constants.W_OK);
    const half = unfinished(target);
    try {
      writeFileSync(half, text, { mode });
      if (old !== undefined) chmodSync(half, old.mode);
      renameSync(half, target);
    } catch (error) {
      rmSync(half, { force: true });
      throw error;
    }
  });
}
