/** The parts of a file that say something wrong. */
import { type AstNode, CstUtils, type LangiumDocument } from "langium";
import {
  type Block,
  type Document,
  type Drill,
  isBlock,
  isDimension,
  isDrill,
  isMetric,
  isShots,
  isSuccess,
  isWindow,
} from "../generated/tree/ast.ts";
import type { TextRange } from "./check.ts";

export interface FaultyParts {
  /**
   * What errors lie in: of a block the block alone; of a plan, a drill or another declaration that; and where the words
   * are in doubt that plans are made of, the whole file.
   */
  readonly parts: ReadonlySet<AstNode>;
  /** The statements and goals that errors lie in, of blocks and drills that have no other errors. */
  readonly lines: ReadonlyMap<AstNode, ReadonlySet<AstNode>>;
}

export function faultyParts(document: LangiumDocument<Document>, errors: readonly TextRange[]): FaultyParts {
  const parts = new Set<AstNode>();
  const lines = new Map<AstNode, Set<AstNode>>();
  const throughout = new Set<AstNode>();
  const root = document.parseResult.value;
  for (const { start } of errors) {
    const leaf =
      root.$cstNode && CstUtils.findLeafNodeAtOffset(root.$cstNode, document.textDocument.offsetAt(start));
    let line: AstNode | undefined;
    for (let at = leaf?.astNode; at !== undefined; at = at.$container) {
      if (isWindow(at) || isMetric(at) || isDimension(at)) parts.add(root);
      if (isSuccess(at.$container) || (at.$containerProperty === "statements" && line === undefined))
        line = at;
      if (isBlockOrDrill(at)) {
        // Without its shots nothing is known of a block.
        if (line === undefined || line === at || isShots(line)) throughout.add(at);
        else lines.set(at, (lines.get(at) ?? new Set()).add(line));
      }
      if (at.$container !== root && !isBlock(at)) continue;
      parts.add(at);
      break;
    }
  }
  for (const block of throughout) lines.delete(block);
  return { parts, lines };
}

function isBlockOrDrill(node: AstNode | undefined): node is Block | Drill {
  return isBlock(node) || isDrill(node);
}
