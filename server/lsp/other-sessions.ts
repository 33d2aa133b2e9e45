/** The sessions of the workspace that others may be held against. */
import type { Session } from "../../language/generated/tree/ast.ts";
import type { Lowering } from "../../language/lowering/document.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { Names } from "../../language/names/names.ts";
import type { DataFiles } from "../import/import-files.ts";
import type { OtherSession, ReadSession } from "../scoring/earlier/other-sessions.ts";

/** All but this one, as the trees are now. Nothing is read before somebody asks for it. Linear in the sessions. */
export function otherSessions(
  session: Session,
  names: Names,
  lowering: Lowering,
  dataFiles: DataFiles,
  namesKnown: () => Promise<void>,
): OtherSession[] {
  return names
    .sessions()
    .filter((other) => other !== session)
    .flatMap((other) => otherSession(other, lowering, dataFiles, namesKnown) ?? []);
}

/** Undefined where mistakes leave open what the session is. */
function otherSession(
  session: Session,
  lowering: Lowering,
  dataFiles: DataFiles,
  namesKnown: () => Promise<void>,
): OtherSession | undefined {
  const read = async (): Promise<ReadSession | string> => {
    await namesKnown();
    try {
      const input = lowering.session(session);
      const { importFiles } = await import("../import/import-files.ts");
      return { input, data: await importFiles(input, dataFiles) };
    } catch (error) {
      if (error instanceof IncompleteError) return "a file that it uses has mistakes";
      throw error;
    }
  };
  try {
    return { ...lowering.facts(session), read };
  } catch (error) {
    if (error instanceof IncompleteError) return undefined;
    throw error;
  }
}
