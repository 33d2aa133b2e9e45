import { DocumentState } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { CancellationToken, Connection } from "vscode-languageserver";
import {
  type SessionReport,
  type SessionReportParams,
  sessionReport,
} from "../../../shared/protocol/session-report.ts";
import { type ScoredSession, unreadData } from "../scorer.ts";
import type { Scores } from "../scores.ts";
import { signalOf } from "./signal.ts";

export function handleSessionReport(
  connection: Connection,
  { workspace: { DocumentBuilder } }: LangiumSharedServices,
  scores: Scores,
): void {
  connection.onRequest(
    sessionReport.method,
    async ({ session }: SessionReportParams, token: CancellationToken): Promise<SessionReport | null> => {
      await DocumentBuilder.waitUntil(DocumentState.IndexedReferences, token);
      const attempt = await scores.attemptAt(session, signalOf(token));
      if (attempt === null) return null;
      const none = (problem: string): SessionReport => ({ title: session.name, page: null, problem });
      if (typeof attempt === "string") return none(attempt);
      const unread = unreadData(attempt.report);
      return unread === undefined ? reportOn(attempt) : none(unread);
    },
  );
}

/** What makes pages is loaded with the first. */
async function reportOn({ report, input, data }: ScoredSession): Promise<SessionReport> {
  const { reportsHtml } = await import("../../report/formats/html.ts");
  const { sessionTitle } = await import("../../report/summary.ts");
  const { estimatesAmong } = await import("../../scoring/estimates.ts");
  const estimates = estimatesAmong(input.metrics, data.shots);
  return {
    title: sessionTitle(report),
    page: reportsHtml([{ report, input, data, estimates }]),
    problem: null,
  };
}
