/** Results that may go to a file. */
import { existsSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { PathError } from "../node/path-error.ts";
import { isSameFile, nameOfPath, pathOfName } from "../node/path-names.ts";
import { writeWhole, writing } from "../node/writing.ts";
import { UsageError } from "./command.ts";
import type { Io } from "./io.ts";

/** The options that commands with such results have. */
export const OUTPUT = {
  output: {
    kind: "text",
    placeholder: "FILE",
    meaning: "Write to this file instead of standard output.",
  },
  force: { kind: "flag", meaning: "Overwrite the file if it is there already, but never one that was read." },
} as const;

export interface OutputChoice {
  readonly output: string | undefined;
  readonly force: boolean;
}

/**
 * Says before any work is done that the result cannot go where it should.
 * @throws UsageError, PathError
 */
export function assertWritable({ output, force }: OutputChoice, io: Io): void {
  if (output === undefined) {
    if (force) throw new UsageError("--force is about a file that is written: give --output, too.");
    return;
  }
  assertFree(pathOfName(output, io.cwd), force, io.cwd);
}

/** Says that a file must not be overwritten, or cannot be where a folder is, or none is. @throws PathError */
export function assertFree(path: string, force: boolean, cwd: string): void {
  if (!existsSync(path)) {
    writing(path, cwd, () => statSync(dirname(path)));
    return;
  }
  if (statSync(path).isDirectory())
    throw new PathError(`${nameOfPath(path, cwd)} is a folder. Give the name of a file in it.`);
  if (force) return;
  throw new PathError(
    `${nameOfPath(path, cwd)} is there already. Give another name, or --force to overwrite it.`,
  );
}

/**
 * Writes the text to the file, or to standard output where none is given. `read` are the names of the files it was made
 * from. @throws PathError
 */
export function writeOutput(text: string, { output }: OutputChoice, read: readonly string[], io: Io): void {
  if (output === undefined) {
    io.stdout.write(text);
    return;
  }
  const path = pathOfName(output, io.cwd);
  const name = nameOfPath(path, io.cwd);
  if (read.some((each) => isSameFile(pathOfName(each, io.cwd), path))) {
    throw new PathError(
      `${name} is one of the files that were read, which are never changed. Give another name.`,
    );
  }
  writeWhole(path, text, io.cwd);
  io.stderr.write(`Written to ${name}.\n`);
}
