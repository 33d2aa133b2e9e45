/** What can be folded: whatever stands between braces, comments, and rows of `use` statements. */
import type { LangiumDocument } from "langium";
import type { FoldingRangeProvider } from "langium/lsp";
import { type FoldingRange, FoldingRangeKind } from "vscode-languageserver";
import type { Document } from "../generated/tree/ast.ts";
import { textParts } from "./text-parts.ts";

export class DrillwrightFoldingRangeProvider implements FoldingRangeProvider {
  getFoldingRanges(document: LangiumDocument): FoldingRange[] {
    const text = document.textDocument.getText();
    const lineAt = (offset: number) => document.textDocument.positionAt(offset).line;
    const folded: FoldingRange[] = [];
    const openLines: number[] = [];
    const commentLines: number[] = [];
    for (const { kind, start, end } of textParts(text)) {
      if (kind === "{") openLines.push(lineAt(start));
      else if (kind === "}") folded.push(...between(openLines.pop(), lineAt(start)));
      else if (kind === "comment") {
        folded.push(...between(lineAt(start), lineAt(end), FoldingRangeKind.Comment));
      } else if (kind === "line comment" && isAlone(text, start)) commentLines.push(lineAt(start));
    }
    const { uses } = document.parseResult.value as Document;
    const useLines = uses.flatMap(({ $cstNode: cst }) => (cst === undefined ? [] : [cst.range.start.line]));
    return [
      ...folded,
      ...rows(commentLines, FoldingRangeKind.Comment),
      ...rows(useLines, FoldingRangeKind.Imports),
    ];
  }
}

/** Folds up to the line before the closing mark, which stays to be seen. */
function between(
  startLine: number | undefined,
  closingLine: number,
  kind?: FoldingRangeKind,
): FoldingRange[] {
  if (startLine === undefined || closingLine - startLine < 2) return [];
  return [{ startLine, endLine: closingLine - 1, ...(kind && { kind }) }];
}

/** Runs of at least two neighbouring lines. */
function rows(lines: readonly number[], kind: FoldingRangeKind): FoldingRange[] {
  const found: { startLine: number; endLine: number }[] = [];
  for (const line of lines) {
    const last = found.at(-1);
    if (last !== undefined && line === last.endLine + 1) last.endLine = line;
    else found.push({ startLine: line, endLine: line });
  }
  return found.filter(({ startLine, endLine }) => endLine > startLine).map((row) => ({ ...row, kind }));
}

/** Whether nothing but space stands before it on its line. */
function isAlone(text: string, offset: number): boolean {
  return text.slice(text.lastIndexOf("\n", offset - 1) + 1, offset).trim() === "";
}
