/** The sessions of a project that others may be held against. */
import { isSession, type Session } from "../../language/generated/tree/ast.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import { importFiles } from "../import/import-files.ts";
import type { Project, ProjectFile } from "../node/load-project.ts";
import { UnreadableDataError } from "../node/unreadable-data-error.ts";
import type { OtherSession, ReadSession } from "../scoring/earlier/other-sessions.ts";
import type { DataFiles } from "../scoring/run-session.ts";
import { errorsIn } from "./plan-errors.ts";

export interface OtherSessions {
  /** All but this one. */
  except(session: Session): readonly OtherSession[];
}

/** Those of all files that were loaded. Nothing is read before somebody asks for it. */
export function otherSessions(project: Project, dataFiles: DataFiles): OtherSessions {
  const all = project.files.flatMap((file) =>
    file.document.parseResult.value.declarations.filter(isSession).flatMap((session) => {
      const other = otherSession(session, file, project, dataFiles);
      return other === undefined ? [] : [{ session, other }];
    }),
  );
  return {
    except: (session) => all.filter((each) => each.session !== session).map(({ other }) => other),
  };
}

/** Undefined where mistakes leave open what the session is. */
function otherSession(
  session: Session,
  file: ProjectFile,
  project: Project,
  dataFiles: DataFiles,
): OtherSession | undefined {
  let reading: Promise<ReadSession | string> | undefined;
  const read = async (): Promise<ReadSession | string> => {
    const broken = project.reach(file.name).filter((each) => errorsIn(each).length > 0);
    if (broken.length > 0) return `there are errors in ${broken.map(({ name }) => name).join(", ")}`;
    try {
      const input = project.lowering.session(session);
      return { input, data: await importFiles(input, dataFiles) };
    } catch (error) {
      if (error instanceof IncompleteError || error instanceof UnreadableDataError) return error.message;
      throw error;
    }
  };
  try {
    return {
      ...project.lowering.facts(session),
      read() {
        reading ??= read();
        return reading;
      },
    };
  } catch (error) {
    if (error instanceof IncompleteError) return undefined;
    throw error;
  }
}
