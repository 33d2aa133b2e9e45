/** The tables the shots came from, how shots were given to blocks, and what was odd about the tables. */
import { plural } from "../../../shared/plural.ts";
import type { ScoreReport } from "../../../shared/score-report.ts";
import type { DataFinding } from "../../../shared/session-data.ts";
import { startLines } from "../../../shared/start-lines.ts";
import { type Entry, remark, type Section } from "../section.ts";

/** Digits of a content hash that are shown to people. */
const HASH_DIGITS = 12;

/** The beginning of a content hash, enough to tell versions apart. */
export function shortHash(sha256: string): string {
  return `${sha256.slice(0, HASH_DIGITS)}…`;
}

export function dataSection({ data, assignment, findings }: ScoreReport, mostFindings: number): Section {
  const inOrder = findings.toSorted((a, b) => weight(b) - weight(a));
  const shown = inOrder.slice(0, mostFindings).map(findingEntry);
  const more = inOrder.length - shown.length;
  return {
    title: "Data",
    remark: null,
    mark: null,
    entries: [
      ...data.map(({ file, shots, sha256 }) =>
        remark(`${file}: ${plural(shots, "shot")}, SHA-256 ${shortHash(sha256)}`),
      ),
      ...(data.some(({ shots }) => shots > 0) ? [remark(assignment.explanation)] : []),
      ...startEntries(assignment),
      ...shown,
      ...(more > 0 ? [remark(`and ${more} more`)] : []),
    ],
  };
}

/** The starts that were guessed, to be put into the session. */
function startEntries(assignment: ScoreReport["assignment"]): Entry[] {
  const lines = startLines(assignment);
  if (lines.length === 0) return [];
  const entry = remark("This reading, to be put into the session and corrected there:");
  return [{ ...entry, parts: lines.map((line) => remark(line)) }];
}

function weight({ severity }: DataFinding): number {
  return severity === "error" ? 1 : 0;
}

function findingEntry({ severity, file, line, column, message }: DataFinding): Entry {
  // Most messages name the column themselves.
  const inColumn = column === null || message.includes(`column "${column}"`) ? "" : `column "${column}": `;
  return {
    mark: severity,
    text: `${inColumn}${message}`,
    place: line === null ? file : `${file}:${line}`,
    details: [],
    parts: [],
  };
}
