/** What the `.drill` files of the working folder declare that a proposal can refer to. */
import { readFileSync } from "node:fs";
import { EmptyFileSystem, URI } from "langium";
import { createCoreServices } from "../../language/core-module.ts";
import type { Document } from "../../language/generated/tree/ast.ts";
import { NOTHING_DECLARED, type ProjectDeclarations } from "../import/propose/project.ts";
import { findFiles } from "../node/find-files.ts";
import { PathError } from "../node/path-error.ts";
import { planText } from "../node/plan-text.ts";
import { projectDeclarations } from "../node/project-declarations.ts";
import { isSystemError } from "../node/system-errors.ts";
import { UsageError } from "./command.ts";
import { didYouMean, thereAre } from "./parse-arguments.ts";

/**
 * What the proposal at `output` can refer to. Files and folders that cannot be read are passed over: a proposal is no check.
 * @throws UsageError where a name is given that none declares
 */
export function knownDeclarations(
  names: { readonly plan: string | undefined; readonly player: string | undefined },
  output: string,
  cwd: string,
): ProjectDeclarations {
  const declared = declarationsIn(cwd, URI.file(output));
  const assertDeclared = (
    name: string | undefined,
    among: readonly { readonly name: string }[],
    what: string,
    advice: (name: string, names: readonly string[]) => string,
  ) => {
    const known = among.map((each) => each.name);
    if (name === undefined || known.includes(name)) return;
    throw new UsageError(
      `No file in the working folder declares a ${what} ${JSON.stringify(name)}.${advice(name, known)}`,
    );
  };
  assertDeclared(names.plan, declared.plans, "plan", didYouMean);
  assertDeclared(names.player, declared.players, "player", (_, codes) => thereAre(codes));
  return declared;
}

function declarationsIn(cwd: string, proposal: URI): ProjectDeclarations {
  const paths = filesIn(cwd);
  if (paths.length === 0) return NOTHING_DECLARED;
  const { LangiumDocumentFactory } = createCoreServices(EmptyFileSystem).shared.workspace;
  const files = paths.flatMap((path) => {
    const text = textOf(path);
    return text === undefined ? [] : LangiumDocumentFactory.fromString<Document>(text, URI.file(path));
  });
  return projectDeclarations(files, proposal);
}

/** Undefined where it cannot be read. */
function textOf(path: string): string | undefined {
  try {
    const read = planText(readFileSync(path));
    return "text" in read ? read.text : undefined;
  } catch (error) {
    if (isSystemError(error)) return undefined;
    throw error;
  }
}

function filesIn(cwd: string): string[] {
  try {
    return findFiles(["."], cwd, "passed over");
  } catch (error) {
    if (error instanceof PathError) return []; // there are none
    throw error;
  }
}
