/** The word, text or sign of the syntax tree at a place. */
import { CstUtils, type LangiumDocument, type LeafCstNode } from "langium";
import type { Position } from "vscode-languageserver";

/**
 * The characters that names, units and texts are made of. A cursor in front of one is at that word; a cursor in front of
 * any other character is at the word before it.
 */
export const WORD_CHARACTER = /^[\w\p{L}"°%/-]$/u;

/** The smallest piece of text that the cursor is in or right behind. */
export function leafAt(document: LangiumDocument, position: Position): LeafCstNode | undefined {
  const root = document.parseResult.value.$cstNode;
  return CstUtils.findDeclarationNodeAtOffset(root, document.textDocument.offsetAt(position), WORD_CHARACTER);
}
