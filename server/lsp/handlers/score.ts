import type { LangiumSharedServices } from "langium/lsp";
import type { Connection } from "vscode-languageserver";
import type { PlanScore } from "../../../shared/protocol/plan-score.ts";
import { type ScoreParams, score } from "../../../shared/protocol/score.ts";
import type { Scores } from "../scores.ts";

export function handleScore(
  connection: Connection,
  { workspace: { WorkspaceLock, WorkspaceManager } }: LangiumSharedServices,
  scores: Scores,
): void {
  connection.onRequest(score.method, async ({ file }: ScoreParams): Promise<readonly PlanScore[]> => {
    // What was typed before somebody asked is read and checked first.
    await WorkspaceManager.ready;
    await WorkspaceLock.read(() => {});
    scores.forgetAll();
    await scores.refresh();
    return scores.summariesOf(file);
  });
}
