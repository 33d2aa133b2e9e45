/** The sessions of the workspace that others may be held against. */
import { DocumentState, type LangiumDocuments } from "langium";
import { isSession, type Session } from "../../language/generated/tree/ast.ts";
import type { Lowering } from "../../language/lowering/document.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { DataFiles } from "../import/import-files.ts";
import type { OtherSession, ReadSession } from "../scoring/earlier/other-sessions.ts";
import type { File } from "./declared.ts";

/** All but this one, as the trees are now. Nothing is read before somebody asks for it. Linear in the sessions. */
export function otherSessions(
  session: Session,
  documents: LangiumDocuments,
  lowering: Lowering,
  dataFiles: DataFiles,
): OtherSession[] {
  const others: OtherSession[] = [];
  for (const file of documents.all) {
    if (file.state < DocumentState.ComputedScopes) continue;
    for (const declaration of (file as File).parseResult.value.declarations ?? []) {
      if (!isSession(declaration) || declaration === session) continue;
      const other = otherSession(declaration, lowering, dataFiles);
      if (other !== undefined) others.push(other);
    }
  }
  return others;
}

/** Undefined where mistakes leave open what the session is. */
function otherSession(session: Session, lowering: Lowering, dataFiles: DataFiles): OtherSession | undefined {
  const read = async (): Promise<ReadSession | string> => {
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
