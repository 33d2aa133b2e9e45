import type { Declared, RequestMessage } from "./message.ts";

/**
 * Shows a session on a plan, or goes back to the latest. The server keeps the choice while it runs, and tells the new
 * score with `scoresChanged`. A session that no longer exists gives way to the latest.
 */
export const selectSession: RequestMessage<SelectSessionParams, null> = {
  method: "drillwright/selectSession",
};

export interface SelectSessionParams {
  readonly plan: Declared;
  /** Null for the latest. */
  readonly session: Declared | null;
}
