import { type Column, isColumn } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { repeated } from "./repeated.ts";

/** A column of the table that is read as two things. */
export const check = defineCheck({
  on: ["Source"],
  reason: "A column holds one thing. Two readings of it mean that one of the names is a slip.",
  run(source, { document, report }) {
    // A club or a block may set shots aside as well.
    const columns = source.statements
      .filter(isColumn)
      .filter(({ content }) => content.$type !== "ExclusionColumn");
    const headerOf = ({ header }: Column) => header.trim().replace(/\s+/g, " ").toLowerCase();
    for (const { thing, first } of repeated(columns, headerOf)) {
      report({
        message: `This column is read in line ${rangeOf(first).start.line + 1} already. Name another column, or take one of the lines out.`,
        node: thing,
        property: "header",
        fixes: [{ title: "Keep the first", edits: [remove(document, rangeOf(thing))] }],
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
