/** The edits that fixes are made of. */
import { type AstNode, type CstNode, GrammarUtils, type LangiumDocument } from "langium";
import type { Document } from "../generated/tree/ast.ts";
import { PlaceOfNode } from "../syntax/reader/places.ts";
import type { Fix, TextEdit, TextRange } from "./check.ts";
import { quoted } from "./wording.ts";

/** The part of the text that a property of a node was read from; of one with several, the first where no index is given. */
export function cstOf(node: AstNode, property: string, index?: number): CstNode | undefined {
  const { $cstNode: place } = node;
  if (place instanceof PlaceOfNode) {
    const places = place.placesOf(property);
    return places[Math.max(0, Math.min(index ?? 0, places.length - 1))];
  }
  return GrammarUtils.findNodeForProperty(node.$cstNode, property, index);
}

/** The place of a node. Nodes that were read have one. */
export function rangeOf(node: AstNode): TextRange {
  return node.$cstNode?.range ?? { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
}

/** How lines end in a document. */
export function lineEndOf(document: LangiumDocument): string {
  return document.textDocument.getText().includes("\r\n") ? "\r\n" : "\n";
}

export function replace(range: TextRange, newText: string): TextEdit {
  return { range, newText };
}

export function insertBefore(range: TextRange, newText: string): TextEdit {
  return { range: { start: range.start, end: range.start }, newText };
}

export function insertAfter(range: TextRange, newText: string): TextEdit {
  return { range: { start: range.end, end: range.end }, newText };
}

/** Takes a statement out; with its whole line, when it stands alone on it. */
export function remove(document: LangiumDocument, range: TextRange): TextEdit {
  const text = document.textDocument;
  const before = text.getText({ start: { line: range.start.line, character: 0 }, end: range.start });
  const after = text.getText({ start: range.end, end: { line: range.end.line + 1, character: 0 } });
  if (before.trim() === "" && after.trim() === "") {
    return {
      range: {
        start: { line: range.start.line, character: 0 },
        end: { line: range.end.line + 1, character: 0 },
      },
      newText: "",
    };
  }
  return { range, newText: "" };
}

/** Takes words out of a line, with the space before them. */
export function removeWords(document: LangiumDocument, { start, end }: TextRange): TextEdit {
  const before = document.textDocument.getText({ start: { line: start.line, character: 0 }, end: start });
  const space = before.length - before.trimEnd().length;
  return { range: { start: { line: start.line, character: start.character - space }, end }, newText: "" };
}

/** A new first statement between the braces of a node. Undefined where it has none. */
export function insertStatement(
  document: LangiumDocument,
  node: AstNode,
  statement: string,
): TextEdit | undefined {
  const brace = GrammarUtils.findNodeForKeyword(node.$cstNode, "{");
  if (brace === undefined) return undefined;
  const { line } = brace.range.start;
  const opening = document.textDocument.getText({
    start: { line, character: 0 },
    end: { line: line + 1, character: 0 },
  });
  const indentation = /^[ \t]*/.exec(opening)?.[0] ?? "";
  return insertAfter(brace.range, `\n${indentation}  ${statement}`);
}

/** Fixes that state one of these names in a node, `plan "Gate"`: one for each of the first few. */
export function offerStatements(
  document: LangiumDocument,
  node: AstNode,
  keyword: string,
  names: readonly string[],
): Fix[] {
  return names.slice(0, MOST_OFFERED).flatMap((name) => {
    const statement = `${keyword} ${quoted(name)}`;
    const edit = insertStatement(document, node, statement);
    return edit === undefined ? [] : [{ title: `Write ${statement}`, edits: [edit] }];
  });
}

/** More fixes of one kind would be a list to search. */
const MOST_OFFERED = 3;

/** A new `use` below the others, or at the top of the file, below a comment about the file, where there is none. */
export function insertUse(document: LangiumDocument<Document>, path: string): TextEdit {
  const text = document.textDocument.getText();
  const lineEnd = lineEndOf(document);
  const use = `use "${path}"`;
  const last = document.parseResult.value.uses.at(-1);
  if (last !== undefined) return insertAfter(rangeOf(last), lineEnd + use);
  const start = document.textDocument.positionAt(commentAboutFile(text).length);
  return { range: { start, end: start }, newText: use + lineEnd + lineEnd };
}

/** Line comments at the top that an empty line sets apart from what follows. */
function commentAboutFile(text: string): string {
  return /^(?:\/\/[^\n]*\n)+\s*\n/.exec(text)?.[0] ?? "";
}

/** What may stand behind the last statement of a line. */
const ONLY_COMMENTS = /^(?:\s|\/\*(?:[^*]|\*(?!\/))*\*\/)*(?:\/\/.*)?$/;

/** New statements on lines of their own below another one, whatever else stands on its line. */
export function insertStatementsBelow(
  document: LangiumDocument,
  statement: AstNode,
  statements: readonly string[],
): TextEdit {
  const { start, end } = rangeOf(statement);
  const before = lineAt(document, start.line).slice(0, start.character);
  const outside = /^[ \t]*/.exec(before)?.[0] ?? "";
  const inside = before === outside ? outside : `${outside}  `;
  const lineEnd = lineEndOf(document);
  const lines = statements.map((text) => `${lineEnd}${inside}${text}`).join("");
  const behind = lineAt(document, end.line).slice(end.character);
  if (ONLY_COMMENTS.test(behind)) {
    const lineBehind = { line: end.line, character: end.character + behind.length };
    return insertAfter({ start, end: lineBehind }, lines);
  }
  const rest = behind.trimStart();
  const restStart = { line: end.line, character: end.character + behind.length - rest.length };
  return replace({ start: end, end: restStart }, lines + lineEnd + (rest.startsWith("}") ? outside : inside));
}

/** A line of a document, from 0, without its end. */
function lineAt({ textDocument }: LangiumDocument, line: number): string {
  const start = { line, character: 0 };
  return textDocument.getText({ start, end: { line: line + 1, character: 0 } }).replace(/[\r\n]+$/, "");
}
