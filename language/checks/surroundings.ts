/** All that the meaning of a block hangs on besides its own text, as a text to compare; and where that stands. */
import type { AstNode, LangiumDocument } from "langium";
import {
  type Block,
  type Document,
  isBlock,
  isClub,
  isDimension,
  isDrill,
  isMetric,
  isPlan,
  isShots,
  isSuccess,
  isWindow,
  type Plan,
} from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";

/**
 * The words that the file declares, the files it uses, and every file that is reached over these, as they were last read.
 * Linear in both. Where it is the same for two files, names mean the same in both.
 */
export function surroundingsOf(document: LangiumDocument<Document>, names: Names): string {
  const used = names.usedFiles(document).map((file) => file.document);
  const reached = new Set(used.filter((file) => file !== undefined));
  for (const file of reached) {
    for (const { document: next } of names.usedFiles(file)) {
      if (next !== undefined && next !== document) reached.add(next);
    }
  }
  const readings = (files: Iterable<LangiumDocument<Document> | undefined>) =>
    Array.from(files, (file) => file && idOf(file.parseResult.value));
  return JSON.stringify([wordsOf(document).map(textOf), readings(used), readings(reached)]);
}

/** The blocks of a plan, and what they are to each other: how many shots they have, and their goals. */
export function blocksAround(plan: Plan): string {
  const parts = plan.statements
    .filter(isBlock)
    .map((block) => [block.name, block.kind, block.use?.$cstNode?.text, linesForOthers(block).map(textOf)]);
  return JSON.stringify(parts);
}

/** Where everything stands that the meaning of the blocks of a plan hangs on, or of the drills of a file. */
export function placesAround(around: Plan | Document, document: LangiumDocument<Document>): string {
  const blocks = isPlan(around) ? around.statements.filter(isBlock) : [];
  const lines = blocks.flatMap((block) => [block, ...linesForOthers(block)]);
  return JSON.stringify([document.uri.toString(), [...lines, ...wordsOf(document)].map(startOf)]);
}

/** Where a node starts: line and character. */
export function startOf({ $cstNode }: AstNode): string {
  const { line = 0, character = 0 } = $cstNode?.range.start ?? {};
  return `${line}:${character}`;
}

/** What other blocks of the plan may ask a block for. */
function linesForOthers({ statements }: Block): AstNode[] {
  return statements.filter((line) => isShots(line) || isSuccess(line));
}

/** What blocks are made of. */
function wordsOf({ parseResult }: LangiumDocument<Document>): AstNode[] {
  return parseResult.value.declarations.filter(
    (node) => isWindow(node) || isDrill(node) || isMetric(node) || isDimension(node) || isClub(node),
  );
}

export function textOf({ $cstNode }: AstNode): string {
  return $cstNode?.text ?? "";
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
