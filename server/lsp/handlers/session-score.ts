import { DocumentState } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { CancellationToken, Connection } from "vscode-languageserver";
import {
  type SessionScore,
  type SessionScoreParams,
  sessionScore,
} from "../../../shared/protocol/session-score.ts";
import type { Scores } from "../scores.ts";
import { signalOf } from "./signal.ts";

export function handleSessionScore(
  connection: Connection,
  { workspace: { DocumentBuilder } }: LangiumSharedServices,
  scores: Scores,
): void {
  connection.onRequest(
    sessionScore.method,
    async ({ session }: SessionScoreParams, token: CancellationToken): Promise<SessionScore | null> => {
      await DocumentBuilder.waitUntil(DocumentState.IndexedReferences, token);
      return scores.scoreOf(session, signalOf(token));
    },
  );
}
