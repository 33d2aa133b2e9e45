/** The parts of a file that say something wrong. */
import { type AstNode, CstUtils, type LangiumDocument } from "langium";
import { type Document, isBlock, isDimension, isMetric, isWindow } from "../generated/tree/ast.ts";
import type { TextRange } from "./check.ts";

/**
 * What errors lie in: of a block the block alone; of a plan, a drill or another declaration that; and where the words are
 * in doubt that plans are made of, the whole file.
 */
export function faultyParts(document: LangiumDocument<Document>, errors: readonly TextRange[]): Set<AstNode> {
  const faulty = new Set<AstNode>();
  const root = document.parseResult.value;
  for (const { start } of errors) {
    const leaf =
      root.$cstNode && CstUtils.findLeafNodeAtOffset(root.$cstNode, document.textDocument.offsetAt(start));
    for (let at = leaf?.astNode; at !== undefined; at = at.$container) {
      if (isWindow(at) || isMetric(at) || isDimension(at)) faulty.add(root);
      if (at.$container !== root && !isBlock(at)) continue;
      faulty.add(at);
      break;
    }
  }
  return faulty;
}
