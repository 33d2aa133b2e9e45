import type { Declared, RequestMessage } from "./message.ts";

/** The report on one session, scored now. Null where there is no such session. */
export const sessionReport: RequestMessage<SessionReportParams, SessionReport | null> = {
  method: "drillwright/sessionReport",
};

export interface SessionReportParams {
  readonly session: Declared;
}

export interface SessionReport {
  /** `Second try, 2026-10-12` */
  readonly title: string;
  /** An HTML page that needs nothing but itself; null where the session could not be scored. */
  readonly page: string | null;
  /** Why the session could not be scored, and what to do about it, in a sentence; null where it could. */
  readonly problem: string | null;
}
