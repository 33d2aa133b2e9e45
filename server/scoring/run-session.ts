/** A session from its tables to its report: read, import, score. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { SessionData } from "../../shared/session-data.ts";
import { importSession } from "../import/import-session.ts";
import { scoreSession } from "./score-session.ts";

/** What running a session needs from the world outside. */
export interface DataFiles {
  /** The name under which reports speak of a data file, from its path as the session at `sessionFile` writes it. */
  locate(path: string, sessionFile: string): string;
  /** The bytes of a located file, or undefined where there is no such file. */
  read(file: string): Promise<Uint8Array | undefined>;
  /** SHA-256 in lower-case hexadecimal. */
  sha256(content: Uint8Array): string;
}

/** A report, and the shots it was made from. */
export interface ScoredSession {
  readonly report: ScoreReport;
  readonly data: SessionData;
}

/** Cost: linear in the cells of the tables and in shots times criteria. */
export async function runSession(
  input: ScoringInput,
  dataFiles: DataFiles,
  tool: { readonly version: string },
): Promise<ScoredSession> {
  const files = await Promise.all(
    input.session.data.map(async ({ path, source, location }) => {
      const file = dataFiles.locate(path, location.file);
      const content = await dataFiles.read(file);
      return { path: file, source, content, sha256: content === undefined ? "" : dataFiles.sha256(content) };
    }),
  );
  const data = importSession(input, files);
  return { report: scoreSession(input, data, tool), data };
}
