/** The sessions of a project that others may be held against. */
import { isSession, type Session } from "../../language/generated/tree/ast.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import { Latest } from "../../shared/latest.ts";
import { importFiles } from "../import/import-files.ts";
import type { Watcher } from "../import/pieces.ts";
import type { Project, ProjectFile } from "../node/load-project.ts";
import { UnreadableDataError } from "../node/unreadable-data-error.ts";
import type { OtherSession, ReadSession } from "../scoring/earlier/other-sessions.ts";
import type { DataFiles } from "../scoring/run-session.ts";
import { errorsIn } from "./plan-errors.ts";

/** How many shots are kept for whoever asks next: sessions of one season are held against those of the last two weeks. */
const MOST_SHOTS = 100_000;

export interface OtherSessions {
  /** All but this one. */
  except(session: Session): readonly OtherSession[];
}

/** Those of all files that were loaded. Nothing is read before somebody asks for it; what was read lately is at hand. */
export function otherSessions(project: Project, dataFiles: DataFiles, watcher: Watcher = {}): OtherSessions {
  const known = new Latest<Session, ReadSession>(MOST_SHOTS, ({ data }) => data.shots.length);
  const all = project.files.flatMap((file) =>
    file.document.parseResult.value.declarations.filter(isSession).flatMap((session) => {
      const read = async () => {
        const found = known.get(session) ?? (await readSession(session, file, project, dataFiles, watcher));
        if (typeof found !== "string") known.set(session, found);
        return found;
      };
      try {
        return [{ session, other: { ...project.lowering.facts(session), read } }];
      } catch (error) {
        if (error instanceof IncompleteError) return []; // mistakes leave open what the session is
        throw error;
      }
    }),
  );
  return {
    except: (session) => all.filter((each) => each.session !== session).map(({ other }) => other),
  };
}

async function readSession(
  session: Session,
  file: ProjectFile,
  project: Project,
  dataFiles: DataFiles,
  watcher: Watcher,
): Promise<ReadSession | string> {
  const broken = project.reach(file.name).filter((each) => errorsIn(each).length > 0);
  if (broken.length > 0) return `there are errors in ${broken.map(({ name }) => name).join(", ")}`;
  try {
    const input = project.lowering.session(session);
    return { input, data: await importFiles(input, dataFiles, watcher) };
  } catch (error) {
    if (error instanceof IncompleteError || error instanceof UnreadableDataError) return error.message;
    throw error;
  }
}
