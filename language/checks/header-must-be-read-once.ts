import { isColumn } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";

/** A column of the table that is read as two things. */
export const check = defineCheck({
  on: ["Source"],
  reason: "A column holds one thing. Two readings of it mean that one of the names is a slip.",
  run(source, { document, report }) {
    const first = new Map<string, number>();
    for (const column of source.statements.filter(isColumn)) {
      if (column.content.$type === "ExclusionColumn") continue; // a club or a block may set shots aside as well
      const header = column.header.trim().replace(/\s+/g, " ").toLowerCase();
      const line = rangeOf(column).start.line + 1;
      const earlier = first.get(header);
      if (earlier === undefined) {
        first.set(header, line);
        continue;
      }
      report({
        message: `This column is read in line ${earlier} already. Name another column, or take one of the lines out.`,
        node: column,
        property: "header",
        fixes: [{ title: "Keep the first", edits: [remove(document, rangeOf(column))] }],
      });
    }
  },
  reporting: `
source "Bay" {
  column "Distance" is carry in m
  column «"distance"» is total in m
}`,
  fixed: `
source "Bay" {
  column "Distance" is carry in m
}`,
  silent: `
source "Bay" {
  column "Distance" is carry in m
  column "Total" is total in m
  column "Club" is club
  column "Club" excludes when "putter"
}`,
});
