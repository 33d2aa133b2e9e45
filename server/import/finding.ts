/** Findings about one data file, collected while it is read. */
import type { DataFinding } from "../../shared/session-data.ts";

/** A finding before the file it is in is known. What it is not about may be left out. */
export interface Problem {
  readonly code: DataFinding["code"];
  readonly severity: DataFinding["severity"];
  readonly line?: number;
  readonly column?: string;
  readonly text?: string;
  readonly message: string;
}

/** Takes note of a problem; reading goes on. */
export type Report = (problem: Problem) => void;

/** A report that adds to `findings` what it is told about `file`. */
export function reportInto(findings: DataFinding[], file: string): Report {
  return ({ code, severity, line, column, text, message }) => {
    findings.push({
      code,
      severity,
      file,
      line: line ?? null,
      column: column ?? null,
      text: text === undefined ? null : clip(text),
      message,
    });
  };
}

const LONGEST_TEXT = 60;
const LONGEST_LIST = 12;

/** The text on one line, cut to a length that fits into a message. */
export function clip(text: string): string {
  const start = text.slice(0, 4 * LONGEST_TEXT).replace(/\s+/g, " ");
  return start.length <= LONGEST_TEXT ? start : `${start.slice(0, LONGEST_TEXT - 1)}…`;
}

/** The text in quotation marks, cut. */
export function quote(text: string): string {
  return `"${clip(text)}"`;
}

/** Names for a message: `"Carry", "Side" and 3 more`. Empty names are left out. */
export function list(names: readonly string[]): string {
  const stated = names.filter((name) => name.trim() !== "");
  const shown = stated.slice(0, LONGEST_LIST).map(quote);
  const rest = stated.length - shown.length;
  return rest > 0 ? `${shown.join(", ")} and ${rest} more` : shown.join(", ");
}
