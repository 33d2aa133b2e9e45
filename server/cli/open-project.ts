/** From the operands of a command to a loaded project. */
import type { Severity } from "../../language/checks/check.ts";
import { assertEnding, findFiles } from "../node/find-files.ts";
import { type GivenText, loadProject, type Project } from "../node/load-project.ts";
import { pathOfName } from "../node/path-names.ts";
import type { Io } from "./io.ts";
import { readStdin, STDIN, STDIN_FILENAME } from "./stdin.ts";

export interface ProjectOptions {
  /** What standard input is taken to be. */
  readonly stdinFilename?: string;
  /** What is looked for in the files: errors, where nothing else is asked for. */
  readonly severities?: readonly Severity[];
}

/**
 * Loads the files and folders given, the working folder where none are, and standard input for `-`.
 * @throws UsageError, PathError
 */
export async function openProject(
  operands: readonly string[],
  io: Io,
  { stdinFilename = STDIN_FILENAME.default, severities }: ProjectOptions = {},
): Promise<Project> {
  const paths = operands.filter((operand) => operand !== STDIN);
  const files: (string | GivenText)[] = [];
  if (operands.includes(STDIN)) {
    assertEnding(stdinFilename, "Give --stdin-filename the path of one, whether it is there or not.");
    files.push({ path: pathOfName(stdinFilename, io.cwd), bytes: await readStdin(io) });
  }
  if (paths.length > 0 || operands.length === 0) {
    files.push(...findFiles(operands.length === 0 ? ["."] : paths, io.cwd));
  }
  return loadProject(files, io.cwd, severities);
}
