/**
 * The parts of a file that could not be read as a whole. What is missing in them is not looked at: one mistake, one
 * message. Such a part is a block, a declaration, or a plan but for the blocks in it that could be read.
 */
import type { AstNode, ParseResult } from "langium";
import { firstIndexWhere } from "../../shared/first-index.ts";
import { Block, type Document, isBlock, isPlan } from "../generated/tree/ast.ts";
import { brokenPlaces } from "../syntax/syntax-errors.ts";

export class BrokenParts {
  private readonly parts = new Set<AstNode>();

  /** Cost: linear in the declarations, blocks and errors, once they are in order. */
  constructor(result: ParseResult) {
    if (result.parserErrors.length === 0) return;
    const places = brokenPlaces(result);
    const root = result.value as Document;
    const declarations = inOrder([...root.uses, ...root.declarations]);
    const blocks = inOrder(
      root.declarations.filter(isPlan).flatMap((plan) => plan.statements.filter(isBlock)),
    );
    for (const { offset, line, rules } of places) {
      const before = lastBefore(blocks, offset);
      if (before?.$cstNode?.range.end.line === line) this.parts.add(before); // and goes on with what cannot be read
      const isInBlock = rules.includes(Block.$type);
      const part = rules.length < 2 ? undefined : lastBefore(isInBlock ? blocks : declarations, offset);
      if (part === undefined) continue;
      this.parts.add(part);
      if (isPlan(part))
        for (const statement of part.statements) if (!isBlock(statement)) this.parts.add(statement);
    }
  }

  /** Whether a node lies in a part that could not be read. */
  includes(node: AstNode): boolean {
    if (this.parts.size === 0) return false;
    for (let at: AstNode | undefined = node; at !== undefined; at = at.$container) {
      if (this.parts.has(at)) return true;
      if (isBlock(at)) return false;
    }
    return false;
  }

  /** Whether nothing inside a node can be looked at either. */
  isWhole(node: AstNode): boolean {
    return this.parts.has(node) && !isPlan(node);
  }

  has(node: AstNode): boolean {
    return this.parts.has(node);
  }
}

function inOrder<T extends AstNode>(nodes: T[]): T[] {
  return nodes
    .filter(({ $cstNode }) => $cstNode !== undefined)
    .sort((one, other) => offsetOf(one) - offsetOf(other));
}

/** The last of the nodes that starts at or before an offset. */
function lastBefore(nodes: readonly AstNode[], offset: number): AstNode | undefined {
  return nodes[firstIndexWhere(nodes.length, (index) => offsetOf(nodes[index] as AstNode) > offset) - 1];
}

function offsetOf({ $cstNode }: AstNode): number {
  return $cstNode?.offset ?? 0;
}
