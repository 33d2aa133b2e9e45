/** The edits that fixes are made of. */
import { type AstNode, type CstNode, GrammarUtils, type LangiumDocument } from "langium";
import type { TextEdit, TextRange } from "./check.ts";

/** The part of the text that a property of a node was read from. */
export function cstOf(node: AstNode, property: string, index?: number): CstNode | undefined {
  return GrammarUtils.findNodeForProperty(node.$cstNode, property, index);
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
