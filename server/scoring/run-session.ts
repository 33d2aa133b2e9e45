/** A session from its tables to its report: read, import, score. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { SessionData } from "../../shared/session-data.ts";
import { type DataFiles, importFiles, type Watcher } from "../import/import-files.ts";
import { scoreSession } from "./score-session.ts";

export type { DataFiles };

/** A report, and the shots it was made from. */
export interface ScoredSession {
  readonly report: ScoreReport;
  readonly data: SessionData;
}

/**
 * Cost: linear in the cells of the tables and in shots times criteria. Files that come in pieces are not held; `watcher` is
 * told how far they were read, and can stop it. @throws the reason of its signal
 */
export async function runSession(
  input: ScoringInput,
  dataFiles: DataFiles,
  tool: { readonly version: string },
  watcher: Watcher = {},
): Promise<ScoredSession> {
  const data = await importFiles(input, dataFiles, watcher);
  return { report: scoreSession(input, data, tool), data };
}
