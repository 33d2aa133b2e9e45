/** Reports beside plans: pages that run nothing and load nothing. They follow the scores while they are open. */
import { l10n, ViewColumn, type WebviewPanel, window, workspace } from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { sessionReport } from "../../shared/protocol/session-report.ts";
import { shown } from "../shown-text.ts";
import type { Workbench } from "../workbench.ts";

interface Report {
  readonly title: string;
  readonly page: string;
}

/** One for each session. */
const panels = new Map<string, WebviewPanel>();

export function showReport(workbench: Workbench, session: Declared, report: Report): void {
  const key = JSON.stringify([session.file, session.name]);
  const panel = panels.get(key) ?? newPanel(workbench, session, key);
  fill(panel, report);
  panel.reveal(undefined, true);
}

function newPanel(workbench: Workbench, session: Declared, key: string): WebviewPanel {
  const panel = window.createWebviewPanel(
    "drillwright.report",
    "",
    { viewColumn: ViewColumn.Beside, preserveFocus: true },
    { enableScripts: false, localResourceRoots: [], enableFindWidget: true },
  );
  panels.set(key, panel);
  const following = workbench.scores.onDidChange(() => void follow(workbench, session, panel));
  panel.onDidDispose(() => {
    panels.delete(key);
    following.dispose();
  });
  return panel;
}

/** What cannot be scored right now leaves the last page as it is: the editor says why. */
async function follow({ server, output }: Workbench, session: Declared, panel: WebviewPanel): Promise<void> {
  if (!panel.visible || !server.isRunning) return;
  try {
    const report = await server.ask(sessionReport, { session });
    if (report?.page != null) fill(panel, { title: report.title, page: report.page });
  } catch (error) {
    output.warn(`The report was not renewed: ${String(error)}`);
  }
}

function fill(panel: WebviewPanel, { title, page }: Report): void {
  panel.title = l10n.t("Report: {0}", shown(title));
  const html = withoutFolders(page);
  if (panel.webview.html !== html) panel.webview.html = html;
}

/** Places are told from the folder that is open, not from the root of the machine. */
export function withoutFolders(page: string): string {
  return (workspace.workspaceFolders ?? []).reduce(
    (text, { uri }) => text.replaceAll(`${uri.toString()}/`, ""),
    page,
  );
}
