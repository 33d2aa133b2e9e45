import { DocumentState } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { CancellationToken, Connection } from "vscode-languageserver";
import { type PlanSessions, type SessionsParams, sessions } from "../../../shared/protocol/sessions.ts";
import type { Practice } from "../practice.ts";

export function handleSessions(
  connection: Connection,
  { workspace: { DocumentBuilder } }: LangiumSharedServices,
  practice: Practice,
): void {
  connection.onRequest(
    sessions.method,
    async ({ file }: SessionsParams, token: CancellationToken): Promise<readonly PlanSessions[]> => {
      await DocumentBuilder.waitUntil(DocumentState.IndexedReferences, token);
      return practice.sessionsOf(file);
    },
  );
}
