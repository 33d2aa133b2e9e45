/** From the rows of one table to shots that know everything but their block. */
import type { ScoringInput, Source } from "../../../shared/plan-model.ts";
import type { Row } from "../../../shared/session-data.ts";
import { quote, type Report } from "../finding.ts";
import type { Lookup } from "../spelling.ts";
import type { TableRow } from "../table/table.ts";
import { blockLookup } from "./blocks.ts";
import { clubLookup } from "./clubs.ts";
import type { Columns } from "./columns.ts";
import { metricReader } from "./metric-reader.ts";
import { isBlank } from "./number.ts";
import { UnknownNames, unknownBlock, unknownClub } from "./unknown-names.ts";

/** A shot as its row has it. */
export interface Hit {
  readonly row: Row;
  /** SI units, target frame. */
  readonly values: Record<string, number>;
  readonly club: string | null;
  /** The block the row names; null where it names none the plan has; undefined where it says nothing. */
  readonly namedBlock: string | null | undefined;
  readonly excluded: string | null;
}

/**
 * Reads the shots. A cell that cannot be read, a club or block that is not known, and a reading that is implausible
 * are reported as warnings; the first three are then unknown, the last is kept. Where several columns hold the same
 * metric, the first one in the source that has a reading counts. Linear in cells.
 */
export function readHits(
  rows: readonly TableRow[],
  columns: Columns,
  source: Source,
  file: string,
  input: ScoringInput,
  report: Report,
): Hit[] {
  const readers = columns.metrics.map((column) => metricReader(column, source, input, report));
  const clubs = columns.clubs.map((column) => {
    const unknown = new UnknownNames(column.header, (found) => unknownClub(found, source, input));
    return { column, find: clubLookup(column.content.spellings, input.clubs), unknown };
  });
  const blocks = columns.blocks.map((column) => {
    const unknown = new UnknownNames(column.header, (found) => unknownBlock(found, input));
    return { column, find: blockLookup(input.plan), unknown };
  });
  const hits = rows.map((row): Hit => {
    const values: Record<string, number> = {};
    for (const read of readers) read(row, values);
    return {
      row: { file, line: row.line },
      values,
      club: named(row, clubs) ?? null,
      namedBlock: named(row, blocks),
      excluded: exclusion(row, columns),
    };
  });
  for (const { unknown } of clubs) unknown.reportAs("club-unknown", report);
  for (const { unknown } of blocks) unknown.reportAs("block-unknown", report);
  return hits;
}

interface NameColumn {
  readonly column: { readonly index: number };
  readonly find: Lookup;
  readonly unknown: UnknownNames;
}

/** What the first of the columns that says anything names; null where that is not known, undefined where none says anything. */
function named(row: TableRow, columns: readonly NameColumn[]): string | null | undefined {
  for (const { column, find, unknown } of columns) {
    const text = (row.cells[column.index] ?? "").trim();
    if (isBlank(text)) continue;
    const name = find(text);
    if (name === undefined) unknown.note(text, row.line);
    return name ?? null;
  }
  return undefined;
}

function exclusion(row: TableRow, columns: Columns): string | null {
  for (const { index, header, content } of columns.exclusions) {
    const text = (row.cells[index] ?? "").trim().toLowerCase();
    const mark = content.texts.find((mark) => mark.trim().toLowerCase() === text);
    if (mark !== undefined)
      return text === ""
        ? `blank in column ${quote(header)}`
        : `marked ${quote(mark)} in column ${quote(header)}`;
  }
  return null;
}
