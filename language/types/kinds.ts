/** The kinds of blocks. */
import type { Block, BlockKind } from "../generated/tree/ast.ts";

/** The kind of a block: its own, else its drill's; blocked where none is stated. */
export function kindOf({ kind, use }: Block): BlockKind {
  return kind ?? use?.drill?.ref?.kind ?? "blocked";
}

export function isBaseline(block: Block): boolean {
  return kindOf(block) === "baseline";
}

const TESTS: ReadonlySet<BlockKind> = new Set(["test", "retention", "transfer"]);

/** Whether a block shows what was learned: without help, on another day, or in a changed task. */
export function isTest(block: Block): boolean {
  return TESTS.has(kindOf(block));
}

/** What `the baseline` means in a block: the first baseline among the blocks before it. Cost: linear in the blocks. */
export function baselineBefore(block: Block, blocks: readonly Block[]): Block | undefined {
  return blocks.slice(0, blocks.indexOf(block)).find(isBaseline);
}
