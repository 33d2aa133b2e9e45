/** How many shots the block around a part of the text asks for. */
import { type AstNode, AstUtils } from "langium";
import { Block, Drill, isDrill, isShots, type Shots } from "../generated/tree/ast.ts";
import { bindingsOf, numberOf } from "./parameters.ts";

export interface AskedShots {
  readonly block: Block | Drill;
  /** All shots of the block together. */
  readonly asked: number;
  /** Whether more may be hit: "at least" so many. */
  readonly open: boolean;
}

const known = new WeakMap<Block | Drill, AskedShots>();

/**
 * The shots of the block or drill at or around a node; undefined outside of them, where none are stated, and where a
 * number of them is not known. A block that states none has those of its drill, with the block's arguments.
 */
export function shotsOf(node: AstNode): AskedShots | undefined {
  const block = AstUtils.getContainerOfType(node, isBlockOrDrill);
  if (block === undefined) return undefined;
  let shots = known.get(block);
  if (shots === undefined) {
    const lines = shotLines(block);
    const bindings = bindingsOf(block);
    const counts = lines.map(({ count }) => numberOf(count, bindings));
    if (counts.length === 0 || counts.includes(undefined)) return undefined;
    const asked = counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
    shots = { block, asked, open: lines.some(({ open }) => open) };
    // What a drill elsewhere says may change without this file being parsed again.
    if (isDrill(block) || block.use === undefined) known.set(block, shots);
  }
  return shots;
}

/** The most shots of the block around a node that count; undefined where that is open, or not known. */
export function mostShots(node: AstNode): number | undefined {
  const shots = shotsOf(node);
  return shots?.open === false ? shots.asked : undefined;
}

/** The lines that say how many shots are hit: the block's own, else its drill's. */
function shotLines(block: Block | Drill): readonly Shots[] {
  const own = block.statements.filter(isShots);
  if (own.length > 0 || isDrill(block)) return own;
  return block.use?.drill?.ref?.statements.filter(isShots) ?? [];
}

function isBlockOrDrill(node: AstNode): node is Block | Drill {
  return node.$type === Block.$type || node.$type === Drill.$type;
}
