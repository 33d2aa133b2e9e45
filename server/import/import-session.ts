/** From the tables of a session to its shots. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import { plural } from "../../shared/plural.ts";
import type { DataFile, DataFinding, SessionData, Shot } from "../../shared/session-data.ts";
import { assign } from "./assignment/assign.ts";
import { bindColumns } from "./cells/columns.ts";
import { type Hit, readHits } from "./cells/hits.ts";
import { inOrder } from "./cells/order.ts";
import { derive, formulas } from "./derive/derive.ts";
import { quote, type Report, reportInto } from "./finding.ts";
import { decodeText } from "./table/decode.ts";
import { shotRows } from "./table/rows.ts";
import { readTable } from "./table/table.ts";

/** A table as it was found where the session points. */
export interface ImportedFile {
  /** How findings and shots call the file. */
  readonly path: string;
  /** Name of the source that reads it. */
  readonly source: string;
  /** Bytes as stored, or text; undefined where there is no such file. */
  readonly content: Uint8Array | string | undefined;
  /** SHA-256 of the bytes, in hexadecimal digits. */
  readonly sha256: string;
}

/**
 * Reads the tables of a session. Whatever they hold there is a result: what cannot be read is reported and left
 * unknown, and a file that cannot be read at all is one error, contributes no shots, and keeps no other from being read.
 * The shots stand in the order they were hit, file after file. Linear in cells, but for sorting where the source names
 * a column to order by.
 */
export function importSession(input: ScoringInput, files: readonly ImportedFile[]): SessionData {
  const findings: DataFinding[] = [];
  const read = files.map((file) => ({ file, hits: readFile(file, input, reportInto(findings, file.path)) }));
  const hits = read.flatMap((file) => file.hits);
  const { blocks, assignment } = assign(hits, input.plan, input.session);
  const derivable = formulas(input.metrics.values());
  const shots = hits.map(({ row, values: measured, club, excluded }, place): Shot => {
    const values = { ...measured };
    const derived = derive(values, derivable);
    return {
      row,
      values,
      categories: {},
      derived,
      club,
      time: null,
      block: blocks[place] ?? null,
      excluded,
    };
  });
  const unassigned = Map.groupBy(
    shots.filter(({ block }) => block === null),
    ({ row }) => row.file,
  );
  for (const [file, shots] of unassigned) reportUnassigned(shots, input, reportInto(findings, file));
  return { files: read.flatMap(({ file, hits }) => dataFile(file, hits)), shots, assignment, findings };
}

function dataFile({ path, content, sha256 }: ImportedFile, hits: readonly Hit[]): DataFile[] {
  return content === undefined ? [] : [{ file: path, sha256, shots: hits.length }];
}

/** The shots of one file in the order they were hit; none, with an error reported, where it cannot be read. */
function readFile({ path, source: name, content }: ImportedFile, input: ScoringInput, report: Report): Hit[] {
  const fail = (code: DataFinding["code"], message: string) => {
    report({ code, severity: "error", message });
    return [];
  };
  if (content === undefined) {
    return fail(
      "file-missing",
      `There is no file ${quote(path)}. Check the path that session ${quote(input.session.name)} states: it counts from the folder the session's own file is in.`,
    );
  }
  const source = input.sources.get(name);
  if (source === undefined) {
    return fail(
      "file-unreadable",
      `There is no source ${quote(name)} that says how to read this file. Declare it, or name another in session ${quote(input.session.name)}.`,
    );
  }
  const text = typeof content === "string" ? content : decodeText(content);
  if (text.trim() === "") {
    return fail("file-empty", "The file is empty. Export the shots again, or take it out of the session.");
  }
  const table = readTable(text, source, report);
  if (table === undefined) return [];
  const columns = bindColumns(table.header, source, input.player, report);
  if (columns === undefined) return [];
  const rows = shotRows(table, columns, report);
  if (rows.length === 0) {
    return fail(
      "file-empty",
      `The file has column names in line ${source.headerRow}, but no shots under them.`,
    );
  }
  const ordered = columns.order === null ? rows : inOrder(rows, columns.order, source.decimal, report);
  return readHits(ordered, columns, source, path, input, report);
}

function reportUnassigned(shots: readonly Shot[], { session }: ScoringInput, report: Report): void {
  const [first] = shots;
  if (first === undefined) return;
  const { line } = first.row;
  report({
    code: "shots-unassigned",
    severity: "warning",
    line,
    message: `${plural(shots.length, "shot")}, the first in line ${line}, ${shots.length === 1 ? "belongs" : "belong"} to no block and ${shots.length === 1 ? "is" : "are"} not scored. Where a block starts there, say so in session ${quote(session.name)}: \`block … from row ${line}\`.`,
  });
}
