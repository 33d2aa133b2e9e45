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
  const hidden = inOrder.slice(mostFindings);
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
      ...(hidden.length > 0 ? [remark(moreFindings(hidden))] : []),
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

/** How many columns are named in a line. */
const MOST_COLUMNS = 3;

/** `and 1400 more: 1000 in column "Carry", 300 in column "Time"`, the columns with the most first. */
function moreFindings(findings: readonly DataFinding[]): string {
  const counts = new Map<string | null, number>();
  for (const { column, count = 1 } of findings) counts.set(column, (counts.get(column) ?? 0) + count);
  const all = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const columns = [...counts]
    .filter(([column]) => column !== null)
    .sort(([, one], [, other]) => other - one)
    .slice(0, MOST_COLUMNS)
    .map(([column, count]) => `${count} in column "${column}"`);
  return `and ${all} more${columns.length === 0 ? "" : `: ${columns.join(", ")}`}`;
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
