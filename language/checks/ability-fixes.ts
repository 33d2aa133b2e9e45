/** Ways to put right what the shots of a block cannot show. */
import { AstUtils, GrammarUtils } from "langium";
import type { Location } from "../../shared/plan-model.ts";
import { percent } from "../criteria/wording.ts";
import { isConfidence, isShots } from "../generated/tree/ast.ts";
import type { Fix } from "./check.ts";
import { cstOf, replace } from "./edits.ts";
import type { Meaning } from "./meanings.ts";
import { nodeAt } from "./remarks.ts";
import { shots as shotsInWords } from "./wording.ts";

/** Asks for so many shots, where one line of the block says how many. */
export function askForShots({ node }: Meaning, shots: number | undefined): Fix[] {
  const [line, ...others] = node.statements.filter(isShots);
  const cst = line && cstOf(line.count, "value");
  if (shots === undefined || cst === undefined || others.length > 0) return [];
  const one = GrammarUtils.findNodeForKeyword(line?.$cstNode, "shot");
  const edits = [
    replace(cst.range, String(shots)),
    ...(one === undefined ? [] : [replace(one.range, "shots")]),
  ];
  return [{ title: `Ask for ${shotsInWords(shots)}`, edits }];
}

/** States another confidence in the goal at a place. */
export function stateConfidence({ node }: Meaning, goal: Location, confidence: number | undefined): Fix[] {
  const stated = AstUtils.streamAst(nodeAt(goal, node)).find(isConfidence);
  const cst = stated && cstOf(stated, "level");
  if (confidence === undefined || cst === undefined) return [];
  const level = percent(confidence);
  return [{ title: `Ask at ${level} confidence`, edits: [replace(cst.range, level.replace(" %", ""))] }];
}
