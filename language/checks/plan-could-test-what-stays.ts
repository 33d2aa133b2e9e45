import { isBlock, isSuccess } from "../generated/tree/ast.ts";
import { kindOf } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { statedIn, swingsOf } from "./practice.ts";
import { code } from "./wording.ts";

/** The same task over and over, and what comes before it. */
const UNTESTED: ReadonlySet<string> = new Set(["warm-up", "baseline", "blocked"]);

/** Fewer shots are one exercise of a longer practice. */
const LONG = 20;

/** A practice whose every goal is set in blocks of the same task. */
export const check = defineCheck({
  on: ["Plan"],
  isAboutPractice: true,
  reason:
    "Doing one task over and over flatters: what was learned shows in a test, on another day, or with another task.",
  run(plan, { isBroken, report }) {
    const blocks = plan.statements.filter(isBlock);
    if (blocks.some(isBroken)) return;
    const judged = blocks.filter((block) => statedIn(block, isSuccess).length > 0);
    if (judged.length < 2 || blocks.reduce((sum, block) => sum + swingsOf(block), 0) < LONG) return;
    if (!blocks.every((block) => UNTESTED.has(kindOf(block)))) return;
    report({
      message: `Every goal here is set while one task is repeated, so meeting them says little about what stays. Add a block of the kind ${code("test")}, or a plan with a ${code("retention")} or ${code("transfer")} block on another day.`,
      node: plan,
      property: "name",
    });
  },
  reporting: `
plan «"Gate"» {
  block "Start" blocked {
    10 shots
    success 3 in a row with carry at least 100 m
  }
  block "Again" blocked {
    10 shots
    success 4 in a row with carry at least 100 m
  }
}`,
  silent: `
plan "Gate" {
  block "Start" blocked {
    10 shots
    success 3 in a row with carry at least 100 m
  }
  block "Show it" test {
    10 shots
    success 4 in a row with carry at least 100 m
  }
}`,
});
