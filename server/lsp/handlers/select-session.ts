import type { Connection } from "vscode-languageserver";
import { type SelectSessionParams, selectSession } from "../../../shared/protocol/select-session.ts";
import type { Practice } from "../practice.ts";
import type { Scores } from "../scores.ts";

export function handleSelectSession(connection: Connection, practice: Practice, scores: Scores): void {
  connection.onRequest(
    selectSession.method,
    async ({ plan, session }: SelectSessionParams): Promise<null> => {
      practice.pick(plan, session);
      await scores.refresh();
      return null;
    },
  );
}
