/**
 * Scores the sessions of a project, each by itself: what is wrong with one keeps no other from being scored. A session may
 * be held against others of the project; those are read when they are needed, and once.
 */
import { placeOf } from "../../language/lowering/place.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import { dataFilesOnDisk } from "../node/data-files.ts";
import type { Project, ProjectFile } from "../node/load-project.ts";
import { revisionsIn } from "../node/revision.ts";
import { UnreadableDataError } from "../node/unreadable-data-error.ts";
import type { ReportedSession } from "../report/reported-session.ts";
import type { NotScored } from "../report/score-output.ts";
import { estimatesAmong } from "../scoring/estimates.ts";
import { runSession } from "../scoring/run-session.ts";
import type { ChosenSession } from "./choose-sessions.ts";
import type { Io } from "./io.ts";
import { otherSessions } from "./other-sessions.ts";
import { errorsIn } from "./plan-errors.ts";
import { progressOn } from "./progress.ts";

/** @param Kept what is kept of each session that was scored */
export interface Scored<Kept = ReportedSession> {
  /** In the order in which they were chosen. */
  readonly sessions: readonly Kept[];
  readonly notScored: readonly NotScored[];
  /** The files whose errors keep sessions from being scored, or may hide some. */
  readonly broken: readonly ProjectFile[];
}

/** @param keep takes what is needed of a session as soon as it was scored: the shots of all need not be held. */
export async function scoreSessions<Kept>(
  project: Project,
  chosen: readonly ChosenSession[],
  { cwd, stderr }: Pick<Io, "cwd" | "stderr">,
  tool: { readonly version: string },
  keep: (session: ReportedSession) => Kept,
): Promise<Scored<Kept>> {
  const sessions: Kept[] = [];
  const notScored: NotScored[] = [];
  const progress = progressOn(stderr);
  const dataFiles = dataFilesOnDisk(cwd);
  const others = otherSessions(project, dataFiles, progress);
  const revisionOf = revisionsIn(cwd);
  for (const { session, file } of chosen) {
    const reached = project.reach(file.name);
    const fail = (reason: NotScored["reason"], message: string) => {
      notScored.push({
        session: session.name ?? "",
        location: placeOf(session, () => file.name),
        reason,
        message,
      });
    };
    const broken = reached.filter((each) => errorsIn(each).length > 0);
    if (broken.length > 0) {
      fail("plan-errors", `There are errors in ${broken.map(({ name }) => name).join(", ")}.`);
      continue;
    }
    try {
      const around = { ...tool, others: others.except(session), revisionOf };
      const input = project.lowering.session(session);
      const scored = await runSession(input, dataFiles, around, progress);
      const estimates = estimatesAmong(input.metrics, scored.data.shots);
      sessions.push(keep({ ...scored, input, estimates }));
    } catch (error) {
      if (error instanceof IncompleteError) fail("plan-errors", error.message);
      else if (error instanceof UnreadableDataError) fail("data-unreadable", error.message);
      else throw error;
    }
  }
  return { sessions, notScored, broken: brokenFiles(project, chosen) };
}

/** The files whose errors keep these sessions from being scored; where there are no sessions, those that may hide some. */
export function brokenFiles(project: Project, chosen: readonly ChosenSession[]): ProjectFile[] {
  const relevant = new Set(
    chosen.length > 0 ? chosen.flatMap(({ file }) => project.reach(file.name)) : project.files,
  );
  return project.files.filter((file) => relevant.has(file) && errorsIn(file).length > 0);
}
