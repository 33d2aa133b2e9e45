import type { Connection } from "vscode-languageserver";
import type { PlanScore } from "../../../shared/protocol/plan-score.ts";
import { type ScoreParams, score } from "../../../shared/protocol/score.ts";
import type { Scores } from "../scores.ts";

export function handleScore(connection: Connection, scores: Scores): void {
  connection.onRequest(score.method, async ({ file }: ScoreParams): Promise<readonly PlanScore[]> => {
    scores.forgetAll();
    await scores.refresh();
    return scores.summariesOf(file);
  });
}
