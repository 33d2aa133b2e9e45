import { type Column, isColumn, isMetricColumn } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { repeated } from "./repeated.ts";
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
    for (const { thing, first } of repeated(source.statements.filter(isColumn), heldBy)) {
      const what = isMetricColumn(thing.content) ? code(heldBy(thing) ?? "") : OTHERS[thing.content.$type];
      report({
        message: `${what} is read from column ${quoted(first.header)} already. Keep one of the two.`,
        node: thing,
        fixes: [{ title: `Keep ${quoted(first.header)}`, edits: [remove(document, rangeOf(thing))] }],
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

/** What a column holds: the name of its metric, or the kind of anything else. Any number of columns may set shots aside. */
function heldBy({ content }: Column): string | undefined {
  if (isMetricColumn(content)) return content.metric?.ref?.name;
  return content.$type === "ExclusionColumn" ? undefined : content.$type;
}
