import { isBlock, isShots } from "../generated/tree/ast.ts";
import { kindOf } from "../types/kinds.ts";
import { defineCheck } from "./check.ts";
import { insertBefore, rangeOf } from "./edits.ts";
import { asksForFullEffort, statedIn, swingsOf } from "./practice.ts";
import { code } from "./wording.ts";

/** A plan that short is one exercise of a longer practice. */
const LONG = 30;

/** Full swings before anybody is warm. */
export const check = defineCheck({
  on: ["Plan"],
  isAboutPractice: true,
  reason: "Cold muscles and full swings do not go together, and the first shots say little about the player.",
  run(plan, { isBroken, report }) {
    const blocks = plan.statements.filter(isBlock);
    if (blocks.some(isBroken) || blocks.reduce((sum, block) => sum + swingsOf(block), 0) < LONG) return;
    const first = blocks.find((block) =>
      statedIn(block, isShots).some((line) => asksForFullEffort(line, block)),
    );
    if (first === undefined || kindOf(first) === "warm-up") return;
    if (blocks.slice(0, blocks.indexOf(first)).some((block) => kindOf(block) === "warm-up")) return;
    const indentation = " ".repeat(rangeOf(first).start.character);
    const warmUp = [`block "Wake up" warm-up {`, "  8 shots at 50 % effort", "}", "", ""];
    report({
      message: `Full swings come before any warm-up. Begin with a block of the kind ${code("warm-up")} at little effort.`,
      node: first,
      property: "name",
      fixes: [
        {
          title: "Begin with a warm-up",
          edits: [insertBefore(rangeOf(first), warmUp.join(`\n${indentation}`).replace(/\n +\n/g, "\n\n"))],
        },
      ],
    });
  },
  reporting: `
plan "Gate" {
  block «"Start"» test {
    30 shots
    success 3 in a row with carry at least 150 yd
  }
}`,
  fixed: `
plan "Gate" {
  block "Wake up" warm-up {
    8 shots at 50 % effort
  }

  block "Start" test {
    30 shots
    success 3 in a row with carry at least 150 yd
  }
}`,
  silent: `
plan "Gate" {
  block "Wake up" warm-up {
    8 shots at 50 % effort
  }
  block "Start" test {
    30 shots
    success 3 in a row with carry at least 150 yd
  }
}

plan "Putts" {
  for putter
  block "Ladder" test {
    30 shots
    success 3 in a row with total at least 3 m
  }
}`,
});
