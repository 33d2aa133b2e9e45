/** Reports what an analysis of blocks has to say, where the reader can do something about it. */
import { AstUtils, CstUtils } from "langium";
import type { Location } from "../../shared/plan-model.ts";
import type { Remark } from "../analysis/subject.ts";
import { type Block, type Drill, isBlock, type Plan } from "../generated/tree/ast.ts";
import type { CheckContext, Finding, Fix } from "./check.ts";
import type { Meaning } from "./meanings.ts";

/** Something to be said about a block, and how it may be put right. */
export interface Reported extends Remark {
  readonly fixes?: readonly Fix[];
  readonly unnecessary?: boolean;
}

/**
 * Reports remarks on the blocks of a plan, or on a drill by itself. What is wrong with a drill's lines whatever they are
 * used for is said of the drill, and not again of the blocks made from it; what is wrong with them in one block only is
 * said where the block names its drill.
 */
export function reportRemarks(
  node: Plan | Drill,
  context: CheckContext,
  remarksOn: (meaning: Meaning) => readonly Reported[],
): void {
  for (const meaning of context.meanings.of(node)) {
    const remarks = remarksOn(meaning);
    if (remarks.length === 0) continue;
    const onDrill = isBlock(meaning.node) ? remarksOnDrill(meaning.node, context, remarksOn) : new Set();
    for (const remark of remarks) {
      if (!onDrill.has(keyOf(remark))) context.report(toFinding(remark, meaning));
    }
  }
}

function remarksOnDrill(
  { use }: Block,
  { meanings }: CheckContext,
  remarksOn: (meaning: Meaning) => readonly Reported[],
): Set<string> {
  const drill = use?.drill?.ref;
  if (drill === undefined) return new Set();
  return new Set(meanings.of(drill).flatMap(remarksOn).map(keyOf));
}

/** The lines that a remark is about. */
function keyOf({ location, related }: Remark): string {
  return JSON.stringify([location, ...related.map((other) => other.location)]);
}

function toFinding(remark: Reported, { node, isOwn, block }: Meaning): Finding {
  const { message, location, related, fixes = [], unnecessary = false } = remark;
  if (isOwn(location)) return { message, node: nodeAt(location, node), related, fixes, unnecessary };
  const culprit = { message: block.drill?.name ?? "", location };
  return { message, node, property: "use", related: [culprit, ...related] };
}

/** The widest node that starts where a part of the model was written. */
export function nodeAt({ range }: Location, within: Block | Drill): Finding["node"] {
  const document = AstUtils.getDocument(within);
  const offset = document.textDocument.offsetAt(range.start);
  const root = within.$cstNode;
  let node = root === undefined ? within : (CstUtils.findLeafNodeAtOffset(root, offset)?.astNode ?? within);
  while (node !== within && node.$container?.$cstNode?.offset === offset && node.$container !== within) {
    node = node.$container;
  }
  return node;
}
