import { DocumentState } from "langium";
import type { CancellationToken, Connection } from "vscode-languageserver";
import type { DrillwrightServices } from "../../../language/core-module.ts";
import type { Lowering } from "../../../language/lowering/document.ts";
import {
  type CurriculumPlayers,
  type CurriculumPlayersParams,
  curriculumPlayers,
} from "../../../shared/protocol/curriculum-players.ts";
import { curriculumPlayersOf } from "../curriculum-players.ts";
import type { Scores } from "../scores.ts";
import { signalOf } from "./signal.ts";

export function handleCurriculumPlayers(
  connection: Connection,
  { shared, names: { Names } }: DrillwrightServices,
  lowering: Lowering,
  scores: Scores,
): void {
  connection.onRequest(
    curriculumPlayers.method,
    async (
      { curriculum, today }: CurriculumPlayersParams,
      token: CancellationToken,
    ): Promise<CurriculumPlayers | null> => {
      await shared.workspace.DocumentBuilder.waitUntil(DocumentState.IndexedReferences, token);
      const signal = signalOf(token);
      return curriculumPlayersOf(curriculum, today, Names, lowering, (session) =>
        scores.attemptAt(session, signal),
      );
    },
  );
}
