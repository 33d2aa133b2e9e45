import type { Range } from "../plan-model.ts";
import type { Declared, RequestMessage } from "./message.ts";

/**
 * Which sessions practised the plans a document is about, and which one is shown on each. A document is about the
 * plans it declares and the plans whose sessions it declares. Empty for a document that is about none.
 */
export const sessions: RequestMessage<SessionsParams, readonly PlanSessions[]> = {
  method: "drillwright/sessions",
};

export interface SessionsParams {
  /** URI of the document. */
  readonly file: string;
}

export interface PlanSessions {
  readonly plan: Declared;
  /** Where the plan stands in its document. */
  readonly range: Range;
  /** Latest first; those without a date last. */
  readonly sessions: readonly PracticedSession[];
  /** The session shown on the plan; null where there is none. */
  readonly shown: Declared | null;
  /** True where `shown` was picked; false where it is the latest. */
  readonly picked: boolean;
}

export interface PracticedSession extends Declared {
  /** Where the session stands in its document. */
  readonly range: Range;
  /** As `2026-10-12`; null where the session states none. */
  readonly date: string | null;
  /** The code of the player; null where the session states none. */
  readonly player: string | null;
}
