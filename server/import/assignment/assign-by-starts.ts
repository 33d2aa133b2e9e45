/** Shots to blocks where the session states on which row each block starts. */
import type { Session } from "../../../shared/plan-model.ts";
import type { Hit } from "../cells/hits.ts";
import { quote } from "../finding.ts";
import type { Assigned } from "./assign.ts";

type Start = Session["starts"][number] & { readonly row: number };

/**
 * A block starts with the shot on the stated line, or the first one below it, and goes on, in the order the shots were
 * hit, until another starts. With several tables a line that is not below the one stated before it is a line of the
 * next table. Shots before the first start belong to no block.
 */
export function assignByStarts(hits: readonly Hit[], stated: Session["starts"]): Assigned {
  const starts = stated.filter((start): start is Start => start.row !== null);
  const tables = linesOfTables(hits);
  const blockAt = new Map<number, string>();
  const past: Start[] = [];
  let table = 0;
  for (const [place, start] of starts.entries()) {
    const before = starts[place - 1];
    if (before !== undefined && start.row <= before.row) table = Math.min(table + 1, tables.length - 1);
    const first = tables[table]?.find(({ line }) => line >= start.row);
    if (first === undefined) past.push(start);
    else blockAt.set(first.position, start.block);
  }
  let current: string | null = null;
  const blocks = hits.map((_, position) => {
    current = blockAt.get(position) ?? current;
    return current;
  });
  const sentences = ["Blocks start on the rows that the session states."];
  if (tables.length > 1) {
    sentences.push("A row that is not below the one before it was taken as a row of the next table.");
  }
  for (const { block, row } of past) {
    sentences.push(`Row ${row}, where ${quote(block)} should start, is past the last shot, so it has none.`);
  }
  return { blocks, assignment: { method: "starts", explanation: sentences.join(" ") } };
}

/** For each table, in the order the session names them, the lines of its shots from the top and their places in `hits`. */
function linesOfTables(hits: readonly Hit[]): { line: number; position: number }[][] {
  const tables = new Map<string, { line: number; position: number }[]>();
  for (const [position, { row }] of hits.entries()) {
    const lines = tables.get(row.file);
    if (lines === undefined) tables.set(row.file, [{ line: row.line, position }]);
    else lines.push({ line: row.line, position });
  }
  return [...tables.values()].map((lines) => lines.sort((one, other) => one.line - other.line));
}
