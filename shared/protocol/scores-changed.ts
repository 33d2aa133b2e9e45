import type { NotificationMessage } from "./message.ts";
import type { PlanScore } from "./plan-score.ts";

/**
 * The scores of a document's plans and sessions are new. Replaces all that was told about the document before; none of
 * either means that nothing is left to show.
 */
export const scoresChanged: NotificationMessage<ScoresChangedParams> = {
  method: "drillwright/scoresChanged",
};

export interface ScoresChangedParams {
  /** URI of the document that declares them. */
  readonly file: string;
  /** Of its plans, each with the session that is shown on it. */
  readonly plans: readonly PlanScore[];
  /** Of its sessions, the latest of many, as far as their plans are shown with others. */
  readonly sessions: readonly PlanScore[];
}
