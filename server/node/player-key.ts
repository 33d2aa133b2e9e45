/** The file that tells which code stands for which player: it stays on this machine and out of the repository. */
import { execFileSync } from "node:child_process";
import { appendFileSync, existsSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { csvLine } from "../../shared/csv.ts";
import { KEY_HEADER, PlayerCodes } from "../import/people/codes.ts";
import { PathError } from "./path-error.ts";
import { nameOfPath, pathOfName } from "./path-names.ts";
import { isMissing, reasonOf } from "./system-errors.ts";
import { writeWhole, writing } from "./writing.ts";

/** Where the key is, and whether it is safe there. */
export interface KeyPlace {
  readonly path: string;
  /** The top folder of the repository it is in; undefined where it is in none. */
  readonly repository: string | undefined;
}

/**
 * The place of a key file. It must be in the working folder, so that nobody leaves names in a place that is forgotten, and
 * git must not know it. @throws PathError
 */
export function keyPlace(name: string, cwd: string): KeyPlace {
  const path = pathOfName(name, cwd);
  const fromHere = relative(cwd, path);
  if (fromHere.startsWith("..") || fromHere === "" || pathOfName(fromHere, cwd) !== path) {
    throw new PathError(
      `${name} is not in the working folder. The key to the players' names is kept there and nowhere else.`,
    );
  }
  const repository = repositoryOf(dirname(path));
  if (repository !== undefined && git(repository, ["ls-files", "--error-unmatch", "--", path]) === true) {
    throw new PathError(
      `${name} is already part of the repository, and so are the names in it. Take it out (\`git rm --cached ${name}\`) or choose another name with --key.`,
    );
  }
  return { path, repository };
}

/** The codes so far; none where there is no key yet. @throws PathError */
export function readKey({ path }: KeyPlace, cwd: string): PlayerCodes {
  try {
    return PlayerCodes.read(readFileSync(path, "utf8"));
  } catch (error) {
    if (isMissing(error)) return new PlayerCodes();
    throw new PathError(`${nameOfPath(path, cwd)} cannot be read: ${reasonOf(error)}.`);
  }
}

/** Writes the key for its owner alone, after it was made sure that git passes it over. @throws PathError */
export function writeKey({ path, repository }: KeyPlace, codes: PlayerCodes, cwd: string): void {
  if (repository !== undefined) ignore(path, repository, cwd);
  const lines = [KEY_HEADER, ...codes.rows()].map((cells) => csvLine(cells));
  writeWhole(path, `${lines.join("\n")}\n`, cwd, 0o600);
}

function ignore(path: string, repository: string, cwd: string): void {
  if (git(repository, ["check-ignore", "-q", "--", path]) === true) return;
  const rule = `/${relative(repository, path).split(sep).join("/")}`;
  const file = join(repository, ".gitignore");
  writing(file, cwd, () => {
    const text = existsSync(file) ? readFileSync(file, "utf8") : "";
    if (text.split(/\r?\n/).includes(rule)) return;
    appendFileSync(file, `${text === "" || text.endsWith("\n") ? "" : "\n"}${rule}\n`);
  });
}

function repositoryOf(folder: string): string | undefined {
  for (let at = folder; ; at = dirname(at)) {
    if (existsSync(join(at, ".git"))) return at;
    if (dirname(at) === at) return undefined;
  }
}

/** Whether git answers yes; undefined where there is no git to ask. */
function git(folder: string, words: readonly string[]): boolean | undefined {
  try {
    execFileSync("git", words, { cwd: folder, stdio: "ignore" });
    return true;
  } catch (error) {
    return error instanceof Error && "status" in error && typeof error.status === "number"
      ? false
      : undefined;
  }
}
