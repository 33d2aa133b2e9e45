/** A file as a commit has it. */
import { execFile } from "node:child_process";
import { assertEnding } from "../node/find-files.ts";
import type { GivenText } from "../node/load-project.ts";
import { pathOfName } from "../node/path-names.ts";
import { UsageError } from "./command.ts";

const PREFIX = "git:";
const MOST_BYTES = 64 * 1024 * 1024;

/** Whether an operand means a file of a commit: `git:HEAD~1:plans/irons.drill`. */
export function isRevision(operand: string): boolean {
  return operand.startsWith(PREFIX);
}

/**
 * The text, taken to stand where the file stands now: what it uses is read from the working folder. Git runs no program
 * that the repository names for it: blobs are printed as they are stored. @throws UsageError,
 * PathError
 */
export async function revisionText(operand: string, cwd: string): Promise<GivenText> {
  const [, revision = "", path = ""] = /^git:([^:]+):(.+)$/s.exec(operand) ?? [];
  if (path === "" || revision.startsWith("-")) {
    throw new UsageError(
      `${operand} is not a file of a commit. Write git:REVISION:PATH, as in git:HEAD~1:plans/irons.drill.`,
    );
  }
  assertEnding(path, "Give the path of one.");
  const bytes = await blob(`${revision}:./${path}`, cwd);
  if (bytes === undefined) {
    throw new UsageError(
      `Git has no file ${path} in ${revision}, or the working folder is in no repository. Check both with \`git log --oneline -- ${path}\`; paths count from the working folder.`,
    );
  }
  return { path: pathOfName(path, cwd), bytes };
}

function blob(name: string, cwd: string): Promise<Uint8Array | undefined> {
  return new Promise((resolve) => {
    const options = { cwd, encoding: "buffer", maxBuffer: MOST_BYTES, windowsHide: true } as const;
    execFile("git", ["--no-replace-objects", "cat-file", "blob", name], options, (error, stdout) =>
      resolve(error === null ? stdout : undefined),
    );
  });
}
