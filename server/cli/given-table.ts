/** A table that is named on the command line. */
import { stat } from "node:fs/promises";
import { DamagedPackingError } from "../import/gunzip.ts";
import { contentOf, type Watcher } from "../import/pieces.ts";
import { dataFilesOnDisk } from "../node/data-files.ts";
import { PathError } from "../node/path-error.ts";
import { nameOfPath } from "../node/path-names.ts";
import { UnreadableDataError } from "../node/unreadable-data-error.ts";

/**
 * Its bytes, unpacked, piece by piece.
 * @throws PathError where there is no such file, or it is a folder. @throws UnreadableDataError where it cannot be read.
 */
export async function* givenTable(
  path: string,
  cwd: string,
  watcher: Watcher = {},
): AsyncGenerator<Uint8Array> {
  const name = nameOfPath(path, cwd);
  const isFolder = await stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
  if (isFolder) throw new PathError(`${name} is a folder. Give the name of a table in it.`);
  const content = await dataFilesOnDisk(cwd).read(name);
  if (content === undefined)
    throw new PathError(`There is no file ${name}. Check the spelling; paths count from the working folder.`);
  try {
    yield* contentOf(content, name, watcher);
  } catch (error) {
    if (!(error instanceof DamagedPackingError)) throw error;
    throw new UnreadableDataError(`${name} is packed with gzip, but ${error.message}`, { cause: error });
  }
}
