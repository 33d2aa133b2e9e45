/** Sessions of a plan as they followed each other. */
import type { ReportedSession } from "../reported-session.ts";

/** By date; those of a day in the order given, those without a date last. */
export function inOrder(sessions: readonly ReportedSession[]): ReportedSession[] {
  const dateOf = ({ report }: ReportedSession) => report.session.date ?? "9999";
  return sessions.toSorted((one, other) =>
    dateOf(one) < dateOf(other) ? -1 : dateOf(one) > dateOf(other) ? 1 : 0,
  );
}
