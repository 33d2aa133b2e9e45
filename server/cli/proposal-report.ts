/** What a proposal rests on, for whoever has to settle it. */
import { plural } from "../../shared/plural.ts";
import { quote } from "../import/finding.ts";
import type { ProposedColumn } from "../import/propose/columns.ts";
import { meaningText } from "../import/propose/meaning-text.ts";
import type { Proposal } from "../import/propose/propose.ts";
import type { ProposedSource } from "../import/propose/write.ts";
import type { Palette } from "../report/palette.ts";
import { printable } from "../report/printable.ts";

export function proposalReport(proposal: Proposal, notes: readonly string[], palette: Palette): string {
  const { sources, sessions, failed, open } = proposal;
  const lines = [
    ...failed.map(({ path, problem }) => `${path}: ${problem}`),
    ...sources.flatMap((source) => [palette.strong(sourceLine(source)), ...columnLines(source.columns), ""]),
    ...notes,
    ...(sources.length === 0
      ? []
      : [
          `${plural(sessions.length, "session")}. ${open === 0 ? "Nothing is left to settle." : `${plural(open, "question")} to settle: see the lines marked so.`}`,
        ]),
  ];
  return `${lines.map(printable).join("\n")}\n`;
}

function sourceLine({ name, known, form }: ProposedSource): string {
  if (known !== null) return `${name} (declared in ${known.use})`;
  const written =
    form.separator === null
      ? "JSON"
      : `${form.separator} between cells, decimal ${form.decimal}, column names in line ${form.headerRow}`;
  return `${name} (${written})`;
}

/** More columns that are not read are only counted. */
const MOST_UNREAD = 40;

function columnLines(columns: readonly ProposedColumn[]): string[] {
  const unread = columns.filter((column) => meaningText(column) === "").slice(MOST_UNREAD);
  const left = new Set(unread);
  const lines = rowsOf(columns.filter((column) => !left.has(column)));
  return unread.length === 0 ? lines : [...lines, `  not read  ${unread.length} more`];
}

function rowsOf(columns: readonly ProposedColumn[]): string[] {
  const rows = columns.map((column) => [
    meaningText(column) === "" ? "not read" : column.confidence,
    quote(column.header),
    meaningText(column),
    // What the lines to choose from ask is in the meaning, too.
    [...column.reasons, ...(isChoice(column) ? [] : column.settle)].join("; "),
    column.samples.length === 0 ? "" : `such as ${column.samples.map(quote).join(", ")}`,
  ]);
  const widths = [0, 1, 2].map((at) => Math.max(0, ...rows.map((row) => row[at]?.length ?? 0)));
  return rows.map(
    (row) =>
      `  ${row
        .map((cell, at) => cell.padEnd(widths[at] ?? 0))
        .join("  ")
        .trimEnd()}`,
  );
}

function isChoice({ signs, units }: ProposedColumn): boolean {
  return signs.length > 0 || units.length > 0;
}
