import type { Connection } from "vscode-languageserver";
import { type PlanSessions, type SessionsParams, sessions } from "../../../shared/protocol/sessions.ts";
import type { Scores } from "../scores.ts";

export function handleSessions(connection: Connection, scores: Scores): void {
  connection.onRequest(sessions.method, ({ file }: SessionsParams): readonly PlanSessions[] =>
    scores.sessionsOf(file),
  );
}
