import { type AstNode, AstUtils } from "langium";
import {
  isAgainstLastSession,
  isAgainstSession,
  isAgainstUsual,
  isBlock,
  isChange,
} from "../generated/tree/ast.ts";
import { isBaseline } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { statedIn, swingsOf } from "./practice.ts";
import { code } from "./wording.ts";

/** Fewer shots are a part of a longer practice, in which the baseline may have been before. */
const LONG = 40;

/** A change with nothing to compare it with. */
export const check = defineCheck({
  on: ["Plan"],
  isAboutPractice: true,
  reason: "Whether a change moved anything shows only beside shots that were hit before it.",
  run(plan, { isBroken, report }) {
    const blocks = plan.statements.filter(isBlock);
    if (blocks.reduce((sum, block) => sum + swingsOf(block), 0) < LONG) return;
    if (blocks.some(isBroken)) return;
    for (const block of blocks) {
      if (isBaseline(block)) return;
      const [change] = statedIn(block, isChange);
      if (change === undefined) continue;
      if (AstUtils.streamAst(plan).some(looksBack)) return;
      const isOwn = change.$container === block;
      report({
        message: `Nothing shows what the shots were like before this change. Put a block of the kind ${code("baseline")} before it.`,
        node: isOwn ? change : block,
        ...(isOwn ? {} : { property: "use" }),
      });
      return;
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    «change grip "Weaker by a knuckle"»
    40 shots
  }
}`,
  silent: `
plan "Gate" {
  block "Where we are" baseline {
    10 shots
  }
  block "Start" {
    change grip "Weaker by a knuckle"
    40 shots
  }
}`,
});

/** Whether something is compared with shots of another day. */
function looksBack(node: AstNode): boolean {
  return isAgainstUsual(node) || isAgainstSession(node) || isAgainstLastSession(node);
}
