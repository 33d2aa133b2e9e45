/** The revision of a file in the version control that its folder is under, where git is to be had. */
import type { Hash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { pathOfName } from "./path-names.ts";

/** A question that takes longer, as on a slow network drive, is not answered. */
const PATIENCE = 2000;

/**
 * Tells of a file, named by its path relative to `cwd`, the last commit that changed it: null where there is none, or where
 * the file is not exactly what was committed, since the revision would then name another text. Each file is asked for once.
 *
 * Only questions are asked that run no program the repository names: no hooks, filters, signatures or file watchers.
 */
export function revisionsIn(cwd: string): (file: string) => Promise<string | null> {
  const known = new Map<string, Promise<string | null>>();
  return (file) => {
    let revision = known.get(file);
    if (revision === undefined) {
      revision = revisionOf(pathOfName(file, cwd));
      known.set(file, revision);
    }
    return revision;
  };
}

async function revisionOf(path: string): Promise<string | null> {
  const name = basename(path);
  if (!isVersioned(dirname(path))) return null;
  const ask = (...question: string[]) => git(dirname(path), question);
  const commit = await ask("-c", "log.showSignature=false", "log", "-1", "--format=%H", "--", name);
  if (commit === "") return null;
  const stored = await ask("rev-parse", "--verify", "--quiet", `${commit}:./${name}`);
  return (await blobsOf(path)).includes(stored) ? commit : null;
}

/** Whether git would find a repository from here on upwards: to look is cheaper than to start it. */
function isVersioned(folder: string): boolean {
  if (process.env.GIT_DIR !== undefined || existsSync(join(folder, ".git"))) return true;
  const above = dirname(folder);
  return above !== folder && isVersioned(above);
}

/** Empty where git is missing, does not know, or takes too long. */
async function git(folder: string, question: readonly string[]): Promise<string> {
  const { execFile } = await import("node:child_process");
  return new Promise((resolve) => {
    const options = { cwd: folder, timeout: PATIENCE, windowsHide: true } as const;
    execFile("git", ["--no-pager", "--literal-pathspecs", ...question], options, (error, stdout) => {
      resolve(error === null ? stdout.trim() : "");
    });
  });
}

/** The names that git gives the content of a file: as it is, and with line ends as they are committed. */
async function blobsOf(path: string): Promise<string[]> {
  const { createHash } = await import("node:crypto"); // late: it takes a while to load, and most folders have no need
  const blob = (hash: Hash, content: Buffer) =>
    hash.update(`blob ${content.length}\0`).update(content).digest("hex");
  try {
    const content = readFileSync(path);
    const committed = Buffer.from(content.toString("latin1").replaceAll("\r\n", "\n"), "latin1");
    const algorithms = ["sha1", "sha256"];
    return algorithms.flatMap((name) => [content, committed].map((bytes) => blob(createHash(name), bytes)));
  } catch {
    return [];
  }
}
