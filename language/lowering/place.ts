/** Where a part of the model was written, and how it was written. */
import { type AstNode, AstUtils, type CstNode, type Reference, type URI } from "langium";
import type { Location } from "../../shared/plan-model.ts";
import { isCount, isParameter, isQuantity, isShots, type Parameter } from "../generated/tree/ast.ts";
import { argumentOf, type Bindings, NO_BINDINGS } from "../types/parameters.ts";

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

/** The text of a node with comments taken out, white space folded, and parameters replaced by what they stand for. */
export function textOf(node: AstNode, bindings: Bindings = NO_BINDINGS): string {
  return withArguments(node, bindings)
    .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n\r]*/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}

/** The text of a node as it stands there, with parameters replaced by what they stand for. */
export function withArguments(node: AstNode, bindings: Bindings): string {
  if (bindings.size === 0) return node.$cstNode?.text ?? "";
  const changes = AstUtils.streamAst(node).flatMap((part) => {
    const reference = parameterIn(part);
    const argument = argumentOf(reference?.ref as Parameter | undefined, bindings)?.$cstNode?.text;
    return argument === undefined ? [] : [{ cst: reference?.$refNode, by: argument }];
  });
  return rewritten(node, changes);
}

/** Another text for a part of a node; parts that were not read are passed over. */
export interface Change {
  readonly cst: CstNode | undefined;
  readonly by: string;
}

/** The text of a node as it stands there, with some of its parts changed. No two of them overlap. */
export function rewritten(node: AstNode, changes: Iterable<Change>): string {
  const { text = "", offset = 0 } = node.$cstNode ?? {};
  let written = "";
  let from = 0;
  for (const { cst, by } of [...changes].sort(inOrder)) {
    if (cst === undefined) continue;
    written += text.slice(from, cst.offset - offset) + by;
    from = cst.end - offset;
  }
  return written + text.slice(from);
}

const inOrder = (one: Change, other: Change) => (one.cst?.offset ?? 0) - (other.cst?.offset ?? 0);

function parameterIn(node: AstNode): Reference | undefined {
  if (isQuantity(node) || isCount(node)) return node.parameter;
  return isShots(node) && isParameter(node.club?.ref) ? node.club : undefined;
}
