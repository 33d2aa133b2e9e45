/** A session from its tables to its report: read, import, score. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { SessionData } from "../../shared/session-data.ts";
import { type DataFiles, importFiles } from "../import/import-files.ts";
import type { Watcher } from "../import/pieces.ts";
import { type OtherSession, sessionsWanted } from "./earlier/other-sessions.ts";
import { withPhysics } from "./physics.ts";
import { planContent } from "./plan-content.ts";
import { scoreSession } from "./score-session.ts";

export type { DataFiles };

/** Every platform has it; the types of none of them are known here. */
declare const TextEncoder: new () => { encode(text: string): Uint8Array };

/** What is known around a session. */
export interface Surrounding {
  /** The version of this tool. */
  readonly version: string;
  /** The other sessions of the project, whoever practised. Only those are read that the score needs. */
  readonly others?: readonly OtherSession[];
  /** The revision in which a file stands exactly as it is now; null where there is none. */
  readonly revisionOf?: (file: string) => Promise<string | null>;
}

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
  surrounding: Surrounding,
  watcher: Watcher = {},
): Promise<ScoredSession> {
  const { data, notes } = withPhysics(input, await importFiles(input, dataFiles, watcher));
  return { report: await score(input, data, notes, dataFiles, surrounding), data };
}

/** The report on shots that were read already. */
export async function scoreData(
  input: ScoringInput,
  data: SessionData,
  dataFiles: Pick<DataFiles, "sha256">,
  surrounding: Surrounding,
): Promise<ScoreReport> {
  const completed = withPhysics(input, data);
  return score(input, completed.data, completed.notes, dataFiles, surrounding);
}

async function score(
  input: ScoringInput,
  data: SessionData,
  notes: readonly string[],
  { sha256 }: Pick<DataFiles, "sha256">,
  { version, others = [], revisionOf = async () => null }: Surrounding,
): Promise<ScoreReport> {
  const known = await Promise.all(
    sessionsWanted(input, others).map(async (session) => {
      const read = await session.read();
      if (typeof read === "string") return { session, read };
      // What the plan of today asks for is estimated for the shots of then, in the air of then.
      const { data } = withPhysics({ ...read.input, plan: input.plan }, read.data);
      return { session, read: { ...read, data } };
    }),
  );
  const report = scoreSession(input, data, {
    version,
    sha256: sha256(new TextEncoder().encode(planContent(input.plan))),
    revision: await revisionOf(input.plan.location.file),
    others: known,
  });
  return { ...report, notes: [...report.notes, ...notes] };
}
