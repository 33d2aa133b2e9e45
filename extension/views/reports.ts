import { type LogOutputChannel, l10n, workspace } from "vscode";
import { sessionReport } from "../../shared/protocol/session-report.ts";
import type { LanguageServer } from "../language-server.ts";
import { shown } from "../shown-text.ts";
import type { ToldScores } from "../told-scores.ts";
import type { PageMemory } from "./page-memory.ts";
import { type Page, PagePanels } from "./page-panels.ts";

/** Reports on sessions. They follow the scores. */
export function reportPanels(
  server: LanguageServer,
  scores: ToldScores,
  memory: PageMemory,
  output: LogOutputChannel,
): PagePanels {
  return new PagePanels(
    {
      viewType: "drillwright.report",
      ask: async (session) => {
        const report = await server.ask(sessionReport, { session });
        if (report === null) return null;
        return report.page === null ? (report.problem ?? "") : reportPage(report.title, report.page);
      },
      hear: (listener) => scores.onDidChange(listener),
    },
    server,
    memory,
    output,
  );
}

export function reportPage(title: string, html: string): Page {
  return { title: l10n.t("Report: {0}", shown(title)), html: withoutFolders(html) };
}

/** Places are told from the folder that is open, not from the root of the machine. */
export function withoutFolders(page: string): string {
  return (workspace.workspaceFolders ?? []).reduce(
    (text, { uri }) => text.replaceAll(`${uri.toString()}/`, ""),
    page,
  );
}
