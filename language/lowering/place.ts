/** Where a part of the model was written, and how it was written. */
import { type AstNode, AstUtils, type URI } from "langium";
import type { Location } from "../../shared/plan-model.ts";

/** Turns the URI of a file into the name that locations carry. */
export type FileName = (uri: URI) => string;

/** The place of a node; of its first line only, where it spans several. */
export function placeOf(node: AstNode, fileName: FileName): Location {
  const file = fileName(AstUtils.getDocument(node).uri);
  const cst = node.$cstNode;
  if (cst === undefined)
    return { file, range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } } };
  const { start, end } = cst.range;
  if (start.line === end.line) return { file, range: { start, end } };
  const firstLine = (cst.text.split(/\r?\n/, 1)[0] ?? "").replace(/[\s{]+$/, "");
  return { file, range: { start, end: { line: start.line, character: start.character + firstLine.length } } };
}

/** The text of a node with comments taken out and white space folded. */
export function textOf(node: AstNode): string {
  const text = node.$cstNode?.text ?? "";
  return text
    .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n\r]*/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}
