/** Tables for people at a terminal: columns as wide as what stands in them. */
import { printable } from "../printable.ts";

/** A column is no wider than this; longer texts go on in their own line. */
const MOST = 44;

/** Rows with their cells padded, two spaces between columns, nothing at the end of a line. */
export function tableLines(rows: readonly (readonly string[])[]): string[] {
  const texts = rows.map((row) => row.map(printable));
  const columns = Math.max(0, ...texts.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.min(MOST, Math.max(0, ...texts.map((row) => [...(row[column] ?? "")].length))),
  );
  return texts.map((row) =>
    row
      .map((cell, column) => cell + " ".repeat(Math.max(0, (widths[column] ?? 0) - [...cell].length)))
      .join("  ")
      .trimEnd(),
  );
}
