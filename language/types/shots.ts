/** How many shots the block around a part of the text asks for. */
import { type AstNode, AstUtils } from "langium";
import { type Block, isBlock, isShots } from "../generated/tree/ast.ts";

export interface AskedShots {
  readonly block: Block;
  /** All shots of the block together. */
  readonly asked: number;
  /** Whether more may be hit: "at least" so many. */
  readonly open: boolean;
}

const known = new WeakMap<Block, AskedShots>();

/** The shots of the block at or around a node; undefined outside blocks and where a block states none. */
export function shotsOf(node: AstNode): AskedShots | undefined {
  const block = AstUtils.getContainerOfType(node, isBlock);
  if (block === undefined) return undefined;
  let shots = known.get(block);
  if (shots === undefined) {
    const lines = block.statements.filter(isShots);
    if (lines.length === 0) return undefined;
    const asked = lines.reduce((sum, { count }) => sum + count, 0);
    shots = { block, asked, open: lines.some(({ open }) => open) };
    known.set(block, shots);
  }
  return shots;
}
