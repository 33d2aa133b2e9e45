import type { Connection } from "vscode-languageserver";
import { type PlanSessions, type SessionsParams, sessions } from "../../../shared/protocol/sessions.ts";
import type { Practice } from "../practice.ts";

export function handleSessions(connection: Connection, practice: Practice): void {
  connection.onRequest(sessions.method, ({ file }: SessionsParams): readonly PlanSessions[] =>
    practice.sessionsOf(file),
  );
}
