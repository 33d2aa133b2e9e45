/** Scores sessions again and again while their tables are written. */
import type { Session } from "../../language/generated/tree/ast.ts";
import type { SessionData } from "../../shared/session-data.ts";
import { FollowedSession } from "../import/follow/followed-session.ts";
import { PACE, SETTLED } from "../import/follow/pace.ts";
import { dataFilesOnDisk } from "../node/data-files.ts";
import { growingFile, sha256SoFar } from "../node/growing-file.ts";
import type { Project } from "../node/load-project.ts";
import { pathOfName } from "../node/path-names.ts";
import { revisionsIn } from "../node/revision.ts";
import type { ReportedSession } from "../report/reported-session.ts";
import { estimatesAmong } from "../scoring/estimates.ts";
import { scoreData } from "../scoring/run-session.ts";
import { otherSessions } from "./other-sessions.ts";

/** A session that is followed, and its report as its tables stand. */
export interface Following {
  /** Looks at the tables once: a new report where there is something new, or where a last row has waited long enough. */
  look(): Promise<ReportedSession | undefined>;
}

/** @throws IncompleteError where mistakes leave open what the session is. */
export function follow(session: Session, project: Project, cwd: string, version: string): Following {
  const input = project.lowering.session(session);
  const dataFiles = dataFilesOnDisk(cwd);
  const tables = input.session.data.map(({ path, source, location }) => {
    const name = dataFiles.locate(path, location.file);
    return { path: name, source, file: growingFile(pathOfName(name, cwd)) };
  });
  const followed = new FollowedSession(input, tables, sha256SoFar);
  const around = {
    version,
    others: otherSessions(project, dataFiles).except(session),
    revisionOf: revisionsIn(cwd),
  };
  const reported = async (data: SessionData) => ({
    input,
    data,
    estimates: estimatesAmong(input.metrics, data.shots),
    report: await scoreData(input, data, dataFiles, around),
  });
  let quiet = 0;
  let shots = 0;
  return {
    async look() {
      if (await followed.look()) {
        quiet = 0;
        const data = followed.data();
        shots = data.shots.length;
        return reported(data);
      }
      if (++quiet !== SETTLED) return undefined;
      const data = await followed.settledData();
      return data.shots.length === shots ? undefined : reported(data);
    },
  };
}

/** Shows every new report, until the process is interrupted. */
export async function followAll(
  followed: readonly Following[],
  show: (session: ReportedSession) => void,
): Promise<never> {
  for (;;) {
    for (const each of followed) {
      const session = await each.look();
      if (session !== undefined) show(session);
    }
    await new Promise((resolve) => setTimeout(resolve, PACE));
  }
}
