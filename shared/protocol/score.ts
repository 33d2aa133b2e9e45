import type { RequestMessage } from "./message.ts";
import type { PlanScore } from "./plan-score.ts";

/**
 * Reads the data again and scores the plans a document is about (see `sessions`) now. Documents open in the editor
 * count as they stand there, saved or not. The answer comes when their mistakes and the new verdicts have been
 * published.
 */
export const score: RequestMessage<ScoreParams, readonly PlanScore[]> = { method: "drillwright/score" };

export interface ScoreParams {
  /** URI of the document. */
  readonly file: string;
}
