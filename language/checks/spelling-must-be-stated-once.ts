import {
  type ClubSpelling,
  isClubColumn,
  isMetricColumn,
  isPlayerColumn,
  type PlayerSpelling,
  type Spelling,
} from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { repeated } from "./repeated.ts";
import { quoted } from "./wording.ts";

/** A text that stands for two things in one column. */
export const check = defineCheck({
  on: ["Column"],
  reason: "What a cell means must not hang on which of two readings comes first.",
  run({ content }, { report }) {
    if (!isMetricColumn(content) && !isClubColumn(content) && !isPlayerColumn(content)) return;
    const spellings: readonly (Spelling | ClubSpelling | PlayerSpelling)[] = content.spellings;
    for (const { thing } of repeated(spellings, ({ text }) => text.trim().toLowerCase())) {
      report({
        message: `${quoted(thing.text)} stands for something in this column already. Keep one of the two.`,
        node: thing,
      });
    }
  },
  reporting: `
source "Bay" {
  column "Club" is club where "7i" is 7-iron, «"7I" is 9-iron»
  column "Side" is offline in m where "R" is right, «"R" is left»
}`,
  silent: `
source "Bay" {
  column "Club" is club where "7i" is 7-iron, "9i" is 9-iron
  column "Side" is offline in m where "R" is right, "L" is left
}`,
});
