/** From the paths on a command line to the `.drill` files they mean. */
import { type Dirent, readdirSync, type Stats, statSync } from "node:fs";
import { join } from "node:path";
import { FILE_ENDING } from "../../language/names/use-target.ts";
import { LEFT_OUT } from "./left-out.ts";
import { PathError } from "./path-error.ts";
import { nameOfPath, pathOfName } from "./path-names.ts";
import { codeOf, isMissing, reasonOf } from "./system-errors.ts";

/**
 * The absolute paths of the files given and of all files in the folders given, without repetitions, in the order of
 * their paths. Links to files are followed, links to folders are not.
 * @param locked what becomes of a folder that cannot be looked into
 * @throws PathError for a path that does not exist or is no `.drill` file, and where there is no file at all.
 */
export function findFiles(
  paths: readonly string[],
  cwd: string,
  locked: "refused" | "passed over" = "refused",
): string[] {
  const found = new Set<string>();
  for (const path of paths) {
    const absolute = pathOfName(path, cwd);
    if (kindOf(absolute, path).isDirectory()) {
      for (const file of filesIn(absolute, cwd, locked)) found.add(file);
    } else {
      assertEnding(path, `Give ${FILE_ENDING} files, or folders that hold some.`);
      found.add(absolute);
    }
  }
  if (found.size === 0) {
    throw new PathError(
      `There is no ${FILE_ENDING} file in ${paths.map((path) => nameOfPath(pathOfName(path, cwd), cwd)).join(", ")}.`,
    );
  }
  return [...found].sort();
}

/** Says that a path is not that of a plan or a session, and what to give. @throws PathError */
export function assertEnding(path: string, advice: string): void {
  if (!path.endsWith(FILE_ENDING)) throw new PathError(`${path} is no ${FILE_ENDING} file. ${advice}`);
}

function kindOf(absolute: string, path: string): Stats {
  try {
    return statSync(absolute);
  } catch (error) {
    throw new PathError(
      isMissing(error)
        ? `There is no file or folder ${path}. Check the spelling; paths count from the working folder.`
        : `${path}: ${reasonOf(error)}.`,
    );
  }
}

function* filesIn(folder: string, cwd: string, locked: "refused" | "passed over"): Iterable<string> {
  for (const entry of entriesOf(folder, cwd, locked)) {
    if (entry.name.startsWith(".") || LEFT_OUT.has(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* filesIn(path, cwd, locked);
    else if (entry.name.endsWith(FILE_ENDING) && isFile(entry, path)) yield path;
  }
}

function entriesOf(folder: string, cwd: string, locked: "refused" | "passed over"): Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    if (locked === "passed over") return [];
    throw new PathError(`The folder ${nameOfPath(folder, cwd)} cannot be looked into: ${reasonOf(error)}.`);
  }
}

/** A link that leads to no file, or round in a circle, is none. One that may not be followed is told when it is read. */
function isFile(entry: Dirent, path: string): boolean {
  if (!entry.isSymbolicLink()) return entry.isFile();
  try {
    return statSync(path).isFile();
  } catch (error) {
    return !isMissing(error) && codeOf(error) !== "ELOOP";
  }
}
