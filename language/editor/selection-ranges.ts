/** What "expand selection" goes through: the word, the text in its quotation marks, the phrase, the statement, the block … */
import { type AstNode, CstUtils, type LangiumDocument } from "langium";
import type { Position, Range, SelectionRange } from "vscode-languageserver";

/** For each position the ranges around it, each within the next. Cost: the depth of the tree at that place. */
export function selectionRanges(document: LangiumDocument, positions: readonly Position[]): SelectionRange[] {
  return positions.map((position) => rangesAt(document, position));
}

function rangesAt({ parseResult, textDocument }: LangiumDocument, position: Position): SelectionRange {
  const spans = spansAt(parseResult.value, textDocument.offsetAt(position));
  spans.push([0, textDocument.getText().length]);
  const growing: Span[] = [];
  for (const [start, end] of spans) {
    const before = growing.at(-1);
    if (before === undefined || start < before[0] || end > before[1]) growing.push([start, end]);
  }
  const range = ([start, end]: Span): Range => ({
    start: textDocument.positionAt(start),
    end: textDocument.positionAt(end),
  });
  // From the outside in: each is the parent of the one before it.
  let selection: SelectionRange | undefined;
  for (const span of growing.reverse()) {
    selection = selection === undefined ? { range: range(span) } : { range: range(span), parent: selection };
  }
  return selection ?? { range: { start: position, end: position } };
}

type Span = readonly [start: number, end: number];

/** From the smallest outwards. */
function spansAt(root: AstNode, offset: number): Span[] {
  const leaf = root.$cstNode && CstUtils.findLeafNodeBeforeOffset(root.$cstNode, offset + 1);
  const spans: Span[] = [];
  if (leaf === undefined || leaf.end < offset) return spans;
  if (leaf.text.startsWith('"') && leaf.length > 1 && offset > leaf.offset) {
    spans.push([leaf.offset + 1, leaf.end - 1]);
  }
  spans.push([leaf.offset, leaf.end]);
  for (let node: AstNode | undefined = leaf.astNode; node !== undefined; node = node.$container) {
    const cst = node.$cstNode;
    if (cst === undefined) continue;
    const braces = bodyOf(cst.text);
    const inner: Span | undefined = braces && [cst.offset + braces[0], cst.offset + braces[1]];
    if (inner !== undefined && inner[0] <= offset && offset <= inner[1]) spans.push(inner);
    spans.push([cst.offset, cst.end]);
  }
  return spans;
}

/** What stands between the outer braces of a declaration or block. */
function bodyOf(text: string): Span | undefined {
  if (!text.endsWith("}")) return undefined;
  const header = /^(?:[^{"/]|"(?:\\.|[^"\\])*"|\/(?![/*]))*\{/.exec(text)?.[0];
  return header === undefined ? undefined : [header.length, text.length - 1];
}
