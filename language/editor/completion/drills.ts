/** The drill around the cursor, and the drill whose arguments are typed there. */
import { ValueConverter } from "langium";
import { Drill, isDrill, type Parameter } from "../../generated/tree/ast.ts";
import type { Names } from "../../names/names.ts";
import type { Place } from "./place.ts";

/** The use of a drill in a statement: its name in quotation marks, and what follows `with`. */
const USE = /\b(?:from|try)\s*("(?:\\.|[^"\\\r\n])*")\s*(?:with\b([^{}]*))?$/;

/** The use of a drill that ends with a text. */
export interface OpenUse {
  readonly drill: Drill;
  /** The drill's name as it was written, in quotation marks. */
  readonly name: string;
  /** What was written behind `with`; undefined before that. */
  readonly given: string | undefined;
}

/** Undefined where the text ends with no use of a drill that is known. */
export function openUse(text: string, document: Place["document"], names: Names): OpenUse | undefined {
  const [, name, given] = USE.exec(text) ?? [];
  if (name === undefined) return undefined;
  const drill = names.find(document, Drill.$type, ValueConverter.convertString(name))[0];
  return isDrill(drill) ? { drill, name, given } : undefined;
}

/** The names of the arguments that are given, in order; undefined for one that has no name yet. */
export function givenNames(given: string): (string | undefined)[] {
  return given.split(",").map((part) => /^\s*([^\s=]+)\s*=/.exec(part)?.[1]);
}

/** The parameters of the drill that is being declared around the cursor. */
export function parametersAround({ document, token }: Place): readonly Parameter[] {
  const around = document.parseResult.value.declarations.findLast(
    ({ $cstNode }) => $cstNode !== undefined && $cstNode.offset <= token.start,
  );
  return isDrill(around) ? around.parameters : [];
}
