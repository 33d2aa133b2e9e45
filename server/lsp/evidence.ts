/** What a verdict rests on, in words and places for an editor. */
import type { Location } from "../../shared/plan-model.ts";
import type { Evidence } from "../../shared/score-report.ts";
import type { Row } from "../../shared/session-data.ts";
import type { ReadingsAt } from "../report/readings.ts";

/** Rows that are led to; more would bury the first. */
const MOST_ROWS = 10;

/** A place that somebody can go to, and what is there. */
export interface Lead {
  readonly location: Location;
  readonly text: string;
}

/** Beyond what was observed: limits, what would settle it, cautions. A line each. */
export function details({ interval, settles, cautions }: Evidence): string[] {
  return [interval?.text, settles, ...cautions].filter((line) => line !== undefined && line !== null);
}

/** The first of the rows, each with the readings of these metrics. */
export function leads(rows: readonly Row[], metrics: readonly string[], readingsAt: ReadingsAt): Lead[] {
  return rows.slice(0, MOST_ROWS).map((row, index) => {
    const place = [`line ${row.line}`, readingsAt(row, metrics)].filter((part) => part !== "").join(": ");
    const isLast = index === MOST_ROWS - 1 && rows.length > MOST_ROWS;
    return {
      location: { file: row.file, range: lineRange(row.line) },
      text: isLast ? `${place}; and ${rows.length - MOST_ROWS} more rows` : place,
    };
  });
}

/** A line of a file, counted from 1, as a range. */
export function lineRange(line: number): Location["range"] {
  return { start: { line: line - 1, character: 0 }, end: { line, character: 0 } };
}
