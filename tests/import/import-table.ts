/** Imports one table in the words of a test: text in, shots and findings out. */

import { expect } from "vitest";
import type { Column, Source } from "../../shared/plan-model.ts";
import type { DataFinding, SessionData } from "../../shared/session-data.ts";
import { type Stated, scoringInput, source } from "../support/scoring-input.ts";
import { type ImportedFile, importSession } from "./import-session.ts";

export interface TableTest extends Omit<Stated, "sources"> {
  readonly columns: readonly Column[];
  readonly source?: Partial<Source>;
}

export function file(
  content: ImportedFile["content"],
  path = "shots.csv",
  source = "Bay table",
): ImportedFile {
  return { path, source, content, sha256: "0".repeat(64) };
}

export function importTable(
  content: Uint8Array | string,
  { columns, source: stated, ...rest }: TableTest,
): SessionData {
  return importSession(scoringInput({ ...rest, sources: [source(columns, stated)] }), [file(content)]);
}

/** Readings of one metric in the unit worth `factor` in SI, rounded as a reader would, undefined where unknown. */
export function readings({ shots }: SessionData, metric: string, factor = 1): (number | undefined)[] {
  return shots.map(({ values }) => {
    const value = values[metric];
    return value === undefined ? undefined : Number((value / factor).toPrecision(9));
  });
}

/** Two shots, of 1.5° to the left and 150 m and of 2° to the right and 151.25 m, at these lines, and nothing to be said of them. */
export function expectBothShots(data: SessionData, lines: readonly number[]): void {
  expect(readings(data, "club-path", Math.PI / 180)).toEqual([-1.5, 2]);
  expect(readings(data, "carry")).toEqual([150, 151.25]);
  expect(data.shots.map(({ row }) => row.line)).toEqual(lines);
  expect(data.findings).toEqual([]);
}

/** Findings as `severity code line column`, for tests that expect a finding but not its words. */
export function outline(findings: readonly DataFinding[]): string[] {
  return findings.map(({ severity, code, line, column }) =>
    [severity, code, ...(line === null ? [] : [`line ${line}`]), ...(column === null ? [] : [column])].join(
      " ",
    ),
  );
}
