/** All that the meaning of a block hangs on besides its own text, as a text to compare. */
import type { AstNode, LangiumDocument } from "langium";
import {
  type Document,
  isBlock,
  isClub,
  isDimension,
  isDrill,
  isMetric,
  isShots,
  isSuccess,
  isWindow,
  type Plan,
} from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";

/**
 * The words that the file declares, with their places, and every file it uses, directly or over others, as it was last
 * read. Linear in both.
 */
export function surroundingsOf(document: LangiumDocument<Document>, names: Names): string {
  const words = document.parseResult.value.declarations
    .filter((node) => isWindow(node) || isDrill(node) || isMetric(node) || isDimension(node) || isClub(node))
    .map((node) => placedText(node));
  const seen = new Set([document]);
  for (const file of seen) {
    for (const { document: used } of names.usedFiles(file)) if (used !== undefined) seen.add(used);
  }
  const files = [...seen].slice(1).map(({ uri, parseResult }) => [uri.toString(), idOf(parseResult.value)]);
  return JSON.stringify([document.uri.toString(), words, files]);
}

/** What a plan says to its blocks, and which blocks it has: one may be the baseline of another. */
export function planAround({ statements }: Plan): string {
  const parts = statements.map((statement) =>
    isBlock(statement)
      ? [statement.name, statement.kind, statement.use?.$cstNode?.text]
      : statement.$cstNode?.text,
  );
  return JSON.stringify(parts);
}

/** What the blocks of a plan are to each other: how many shots they have, and their goals. */
export function blocksAround({ statements }: Plan): string {
  const parts = statements
    .filter(isBlock)
    .map((block) => block.statements.filter((line) => isShots(line) || isSuccess(line)).map(placedText));
  return JSON.stringify(parts);
}

/** The text of a node and where it stands. */
export function placedText({ $cstNode }: AstNode): string {
  const { line = 0, character = 0 } = $cstNode?.range.start ?? {};
  return `${line}:${character} ${$cstNode?.text ?? ""}`;
}

/** A number for each tree: every reading of a file gives a new one. */
function idOf(tree: object): number {
  let id = ids.get(tree);
  if (id === undefined) {
    id = ++last;
    ids.set(tree, id);
  }
  return id;
}

const ids = new WeakMap<object, number>();
let last = 0;
