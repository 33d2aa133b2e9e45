/** What can be folded: everything in braces, comments, and a row of `use` statements. */
import { type AstNode, type CstNode, CstUtils, type LangiumDocument } from "langium";
import { DefaultFoldingRangeProvider, type FoldingRangeAcceptor } from "langium/lsp";
import { type FoldingRange, FoldingRangeKind } from "vscode-languageserver";
import type { Document } from "../generated/ast.ts";

export class DrillwrightFoldingRangeProvider extends DefaultFoldingRangeProvider {
  protected override collectFolding(document: LangiumDocument, accept: FoldingRangeAcceptor): void {
    super.collectFolding(document, accept);
    const { uses } = document.parseResult.value as Document;
    for (const row of rows(uses.flatMap((use) => use.$cstNode ?? []))) {
      accept({ ...row, kind: FoldingRangeKind.Imports });
    }
    const root = document.parseResult.value.$cstNode;
    for (const row of rows(root === undefined ? [] : lineComments(root))) {
      accept({ ...row, kind: FoldingRangeKind.Comment });
    }
  }

  /** Parts of a sentence that goes on over several lines are not folded one by one. */
  protected override shouldProcess(node: AstNode): boolean {
    return node.$cstNode?.text.endsWith("}") ?? false;
  }
}

/** Runs of at least two neighbouring lines. */
function rows(nodes: readonly CstNode[]): FoldingRange[] {
  const found: { startLine: number; endLine: number }[] = [];
  for (const { range } of nodes) {
    const last = found.at(-1);
    if (last !== undefined && range.start.line === last.endLine + 1) last.endLine = range.end.line;
    else found.push({ startLine: range.start.line, endLine: range.end.line });
  }
  return found.filter(({ startLine, endLine }) => endLine > startLine);
}

/** Comments that have a line of their own. */
function lineComments(root: CstNode): CstNode[] {
  const { fullText } = root.root;
  return CstUtils.flattenCst(root)
    .filter(({ tokenType, offset, range }) => {
      if (tokenType.name !== "SL_COMMENT") return false;
      return fullText.slice(offset - range.start.character, offset).trim() === "";
    })
    .toArray();
}
