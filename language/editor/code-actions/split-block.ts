import { type AstNode, AstUtils } from "langium";
import { CodeActionKind } from "vscode-languageserver";
import { lineEndOf, rangeOf, replace } from "../../checks/edits.ts";
import { quoted } from "../../checks/wording.ts";
import {
  type Block,
  type CountCriterion,
  isBlock,
  isChange,
  isCountCriterion,
  isPlan,
  isShots,
} from "../../generated/tree/ast.ts";
import { type Change, rewritten } from "../../lowering/place.ts";
import { freeName } from "../../names/free-name.ts";
import type { Refactoring } from "./refactoring.ts";

/** A block of many shots as two of half as many, each with its share of the hits asked for. */
export const splitBlock: Refactoring = {
  kind: CodeActionKind.RefactorRewrite,
  offer: (block, { document }) => {
    const plan = AstUtils.getContainerOfType(block, isPlan);
    if (!isBlock(block) || block.use !== undefined || plan === undefined) return [];
    const shots = block.statements.filter(isShots);
    const count = shots[0]?.count.value;
    if (shots.length !== 1 || count === undefined || count < 2) return [];
    const taken = plan.statements.filter(isBlock).map(({ name }) => name);
    const name = freeName(`${block.name}, second half`, taken, " ");
    const first = Math.ceil(count / 2);
    const indentation = " ".repeat(rangeOf(block).start.character);
    const lineEnd = lineEndOf(document);
    const halves = [
      half(block, block.name, first, count, true),
      half(block, name, count - first, count, false),
    ];
    return [
      {
        title: `Split into blocks of ${first} and ${count - first} shots`,
        edits: [replace(rangeOf(block), halves.join(lineEnd + lineEnd + indentation))],
      },
    ];
  },
};

/** The text of a block with a part of its shots. The one change it tries is made at its beginning. */
function half(block: Block, name: string, part: number, all: number, isFirst: boolean): string {
  const changes: Change[] = [];
  const put = (node: AstNode | undefined, by: string) => changes.push({ cst: node?.$cstNode, by });
  for (const statement of block.statements) {
    if (isShots(statement)) put(statement.count, String(part));
    if (isChange(statement) && !isFirst) put(statement, "");
  }
  for (const criterion of AstUtils.streamAst(block).filter(isCountCriterion)) {
    if (criterion.outOf?.value !== undefined && criterion.outOf.value !== all) continue;
    put(criterion.count, String(shareOf(criterion, part, all)));
    put(criterion.outOf, String(part));
  }
  return rewritten(block, changes)
    .replace(/"(?:\\.|[^"\\])*"/, () => quoted(name))
    .replace(/\n[ \t]*(?=\n)/g, "");
}

/** As many hits, or as few misses, for the part as for all. */
function shareOf({ bound, count }: CountCriterion, part: number, all: number): number {
  const share = ((count.value ?? 0) * part) / all;
  return bound === "least" ? Math.ceil(share - 1e-9) : Math.floor(share + 1e-9);
}
