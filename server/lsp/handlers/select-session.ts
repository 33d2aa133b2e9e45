import type { Connection } from "vscode-languageserver";
import { type SelectSessionParams, selectSession } from "../../../shared/protocol/select-session.ts";
import type { Scores } from "../scores.ts";

export function handleSelectSession(connection: Connection, scores: Scores): void {
  connection.onRequest(
    selectSession.method,
    async ({ plan, session }: SelectSessionParams): Promise<null> => {
      scores.pick(plan, session);
      await scores.refresh();
      return null;
    },
  );
}
