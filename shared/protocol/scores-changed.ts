import type { NotificationMessage } from "./message.ts";
import type { PlanScore } from "./plan-score.ts";

/**
 * The scores of a document's plans are new. Replaces all that was told about the document before; no plans means that
 * nothing is left to show.
 */
export const scoresChanged: NotificationMessage<ScoresChangedParams> = {
  method: "drillwright/scoresChanged",
};

export interface ScoresChangedParams {
  /** URI of the document that declares the plans. */
  readonly file: string;
  readonly plans: readonly PlanScore[];
}
