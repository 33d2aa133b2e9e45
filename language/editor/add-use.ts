/** The edit that brings another file's declarations in. */
import type { LangiumDocument } from "langium";
import type { TextEdit } from "vscode-languageserver";
import type { Document } from "../generated/ast.ts";
import { quoted } from "./words.ts";

/** A `use` statement behind the last one; at the top of the file, below a comment about the file, where there is none. */
export function addUse(document: LangiumDocument<Document>, path: string): TextEdit {
  const text = document.textDocument.getText();
  const lineEnd = text.includes("\r\n") ? "\r\n" : "\n";
  const statement = `use ${quoted(path)}`;
  const last = document.parseResult.value.uses.at(-1)?.$cstNode;
  if (last !== undefined) {
    return { range: { start: last.range.end, end: last.range.end }, newText: lineEnd + statement };
  }
  const top = document.textDocument.positionAt(commentAboutFile(text).length);
  return { range: { start: top, end: top }, newText: `${statement}${lineEnd}${lineEnd}` };
}

/** Line comments at the top that an empty line sets apart from what follows. */
function commentAboutFile(text: string): string {
  return /^(?:\/\/[^\n]*\n)+\s*\n/.exec(text)?.[0] ?? "";
}
