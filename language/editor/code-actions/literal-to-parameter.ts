import { type AstNode, AstUtils, GrammarUtils } from "langium";
import { CodeActionKind } from "vscode-languageserver";
import type { TextEdit } from "../../checks/check.ts";
import { cstOf, insertAfter, rangeOf, replace } from "../../checks/edits.ts";
import {
  type Count,
  type Drill,
  isCount,
  isDrill,
  isQuantity,
  type Quantity,
} from "../../generated/tree/ast.ts";
import { freeName } from "../../names/free-name.ts";
import { measureAt } from "../../types/amounts.ts";
import type { Refactoring } from "./refactoring.ts";

/** An amount or a number of a drill as a parameter of it, with the amount as its default. */
export const literalToParameter: Refactoring = {
  kind: CodeActionKind.RefactorExtract,
  offer: (node) => {
    const drill = AstUtils.getContainerOfType(node, isDrill);
    if (drill === undefined || !(isQuantity(node) || isCount(node)) || node.value === undefined) return [];
    const literal = literalOf(node);
    if (literal === undefined) return [];
    const name = freeName(nameFor(node), [...drill.parameters.map((parameter) => parameter.name)]);
    const declaration = declare(drill, `${name}: ${literal.dimension} = ${literal.text}`);
    if (declaration === undefined) return [];
    return [
      {
        title: `Make ${literal.text} a parameter`,
        edits: [declaration, replace(literal.range, name)],
      },
    ];
  },
};

/** The part of an amount that a parameter can stand for: all but its direction. */
function literalOf(node: Quantity | Count) {
  if (isCount(node)) {
    return { text: String(node.value), dimension: "ratio", range: rangeOf(node) };
  }
  const dimension = measureAt(node)?.dimension.name;
  const value = cstOf(node, "value");
  const last = cstOf(node, "unit") ?? value;
  if (dimension === undefined || value === undefined || last === undefined) return undefined;
  const range = { start: value.range.start, end: last.range.end };
  const text = (node.$cstNode?.text ?? "").slice(0, last.end - value.offset);
  return { text, dimension, range };
}

/** By the property of the tree; none is a word of the language. */
const NAMES: Readonly<Record<string, string>> = {
  tolerance: "tolerance",
  centre: "centre",
  effort: "swing-effort",
  length: "length",
  outOf: "number-of-shots",
};

/** What the literal is, in a word. */
function nameFor({ $container: around, $containerProperty: property }: AstNode): string {
  if (property === "count") return around?.$type === "Shots" ? "number-of-shots" : "hits";
  return NAMES[property ?? ""] ?? "threshold";
}

/** A further parameter behind the others, or the first one behind the drill's name. */
function declare(drill: Drill, parameter: string): TextEdit | undefined {
  const last = drill.parameters.at(-1)?.$cstNode;
  if (last !== undefined) return insertAfter(last.range, `, ${parameter}`);
  const name = GrammarUtils.findNodeForProperty(drill.$cstNode, "name");
  return name && insertAfter(name.range, ` (${parameter})`);
}
