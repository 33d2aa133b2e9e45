/** From one operand to the plan model of its file. */
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { PlanModel } from "../../shared/plan-model.ts";
import type { Project } from "../node/load-project.ts";
import { PathError } from "../node/path-error.ts";
import type { Palette } from "../report/palette.ts";
import type { Io } from "./io.ts";
import { openProject } from "./open-project.ts";
import { errorsIn, reportErrors } from "./plan-errors.ts";

export interface OpenedModel {
  /** The name of the file, and those of all files it was made from. */
  readonly file: string;
  readonly files: readonly string[];
  readonly model: PlanModel;
}

/** What is said where one file is asked for. */
export function folderGiven(operand: string): string {
  return `${operand} is a folder. Give a file.`;
}

/**
 * Undefined where there are errors, which are then reported. `noFolder` is said where it is no file.
 * @throws PathError, UsageError
 */
export async function openModel(
  operand: string,
  io: Io,
  stdinFilename: string,
  errorPalette: Palette,
  noFolder = folderGiven(operand),
): Promise<OpenedModel | undefined> {
  return modelOf(await openProject([operand], io, { stdinFilename }), io, errorPalette, noFolder);
}

/** The model of the one file that was given to a project. @throws PathError where there are several */
export function modelOf(
  project: Project,
  io: Io,
  errorPalette: Palette,
  noFolder: string,
): OpenedModel | undefined {
  const [file, ...others] = project.files.filter(({ isGiven }) => isGiven);
  if (file === undefined || others.length > 0) throw new PathError(noFolder);
  const reached = project.reach(file.name);
  const broken = reached.filter((each) => errorsIn(each).length > 0);
  if (broken.length > 0) {
    reportErrors(broken, errorPalette, io);
    return undefined;
  }
  try {
    const files = reached.map(({ name }) => name);
    return { file: file.name, files, model: project.lowering.document(file.document) };
  } catch (error) {
    if (!(error instanceof IncompleteError)) throw error;
    io.stderr.write(`${file.name}: ${error.message}\n`);
    return undefined;
  }
}
