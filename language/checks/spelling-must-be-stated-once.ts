import { isClubColumn, isMetricColumn, isPlayerColumn } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { quoted } from "./wording.ts";

/** A text that stands for two things in one column. */
export const check = defineCheck({
  on: ["Column"],
  reason: "What a cell means must not hang on which of two readings comes first.",
  run({ content }, { report }) {
    if (!isMetricColumn(content) && !isClubColumn(content) && !isPlayerColumn(content)) return;
    const seen = new Set<string>();
    for (const spelling of content.spellings) {
      const text = spelling.text.trim().toLowerCase();
      if (seen.has(text)) {
        report({
          message: `${quoted(spelling.text)} stands for something in this column already. Keep one of the two.`,
          node: spelling,
        });
      }
      seen.add(text);
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
