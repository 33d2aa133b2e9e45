import { isColumn, isMetricColumn } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { code, quoted } from "./wording.ts";

/** What else is read from a column. */
const OTHERS: Readonly<Record<string, string>> = {
  ClubColumn: "The club",
  BlockColumn: "The block",
  PlayerColumn: "The player",
  DateColumn: "The date",
  SessionColumn: "The session",
  TimeColumn: "The time",
};

/** Two columns for one thing. */
export const check = defineCheck({
  on: ["Source"],
  reason: "Where two columns hold the same thing, which of them is read would be an accident.",
  run(source, { document, report }) {
    const first = new Map<string, string>();
    for (const column of source.statements.filter(isColumn)) {
      const { content, header } = column;
      if (content.$type === "ExclusionColumn") continue; // any number of columns may set shots aside
      const metric = isMetricColumn(content) ? content.metric?.ref?.name : undefined;
      if (isMetricColumn(content) && metric === undefined) continue;
      const key = metric ?? content.$type;
      const earlier = first.get(key);
      if (earlier === undefined) {
        first.set(key, header);
        continue;
      }
      const what = metric !== undefined ? code(metric) : OTHERS[content.$type];
      report({
        message: `${what} is read from column ${quoted(earlier)} already. Keep one of the two.`,
        node: column,
        fixes: [{ title: `Keep ${quoted(earlier)}`, edits: [remove(document, rangeOf(column))] }],
      });
    }
  },
  reporting: `
source "Bay" {
  column "Carry" is carry in m
  column "Club" is club
  «column "Carry flat" is carry in m»
  «column "Bat" is club»
}`,
  fixed: `
source "Bay" {
  column "Carry" is carry in m
  column "Club" is club
}`,
  silent: `
source "Bay" {
  column "Carry" is carry in m
  column "Club" is club
  column "Use" excludes when "N"
  column "Note" excludes when "topped"
}`,
});
