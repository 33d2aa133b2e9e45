/** Reports what an analysis of blocks has to say, where the reader can do something about it. */
import { AstUtils, CstUtils } from "langium";
import type { Location } from "../../shared/plan-model.ts";
import type { Remark } from "../analysis/subject.ts";
import { type Block, type Drill, isBlock, type Plan } from "../generated/tree/ast.ts";
import type { CheckContext, Finding, Fix } from "./check.ts";
import { cstOf, rangeOf } from "./edits.ts";
import { blocksOf, type Meaning } from "./meanings.ts";
import type { Remembered } from "./remembered.ts";

/** Something to be said about a block, and how it may be put right. */
export interface Reported extends Remark {
  readonly fixes?: readonly Fix[];
  readonly unnecessary?: boolean;
}

/** What an analysis has to say about a block. Declared once in its file, since answers are remembered by it. */
export type RemarksOn = (meaning: Meaning, context: CheckContext) => readonly Reported[];

/**
 * Reports remarks on the blocks of a plan, or on a drill by itself. What is wrong with a drill's lines whatever they are
 * used for is said of the drill, and not again of the blocks made from it; what is wrong with them in one block only is
 * said where the block names its drill.
 *
 * @param ofLines whether what is said of some lines is true of the block too, whatever else it says
 */
export function reportRemarks(
  node: Plan | Drill,
  context: CheckContext,
  remarksOn: RemarksOn,
  ofLines = false,
): void {
  const { meanings, report } = context;
  for (const block of blocksOf(node)) {
    const findings = meanings.answer(block, remarksOn, () => {
      const meaning = ofLines ? meanings.ofSoundLines(block) : meanings.ofBlock(block);
      return meaning === undefined ? [] : findingsOn(meaning, context, remarksOn);
    });
    for (const finding of findings) report({ ...finding, node: block });
  }
}

function findingsOn(meaning: Meaning, context: CheckContext, remarksOn: RemarksOn): Remembered[] {
  const remarks = remarksOn(meaning, context);
  if (remarks.length === 0) return [];
  const drill = isBlock(meaning.node) ? meaning.node.use?.drill?.ref : undefined;
  const onDrill = drill === undefined ? [] : context.meanings.of(drill);
  const said = new Set(onDrill.flatMap((alone) => remarksOn(alone, context)).map(keyOf));
  return remarks.filter((remark) => !said.has(keyOf(remark))).map((remark) => toFinding(remark, meaning));
}

/** The lines that a remark is about. */
function keyOf({ location, related }: Remark): string {
  return JSON.stringify([location, ...related.map((other) => other.location)]);
}

function toFinding(remark: Reported, { node, isOwn, block }: Meaning): Remembered {
  const { message, location, related, fixes = [], unnecessary = false } = remark;
  if (isOwn(location)) return { message, range: location.range, related, fixes, unnecessary };
  const use = cstOf(node, "use")?.range ?? rangeOf(node);
  const culprit = { message: block.drill?.name ?? "", location };
  return { message, range: use, related: [culprit, ...related] };
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
