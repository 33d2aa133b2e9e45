/** Cards beside plans: pages that run nothing and load nothing. They follow the plan while they are open. */
import { Disposable, l10n, ViewColumn, type WebviewPanel, window } from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { planCard } from "../../shared/protocol/plan-card.ts";
import { projectChanged } from "../../shared/protocol/project-changed.ts";
import { shown } from "../shown-text.ts";
import type { Workbench } from "../workbench.ts";

/** One for each plan. */
const panels = new Map<string, WebviewPanel>();

export function showCard(workbench: Workbench, plan: Declared, page: string): void {
  const key = JSON.stringify([plan.file, plan.name]);
  const panel = panels.get(key) ?? newPanel(workbench, plan, key);
  fill(panel, page);
  panel.reveal(undefined, true);
}

function newPanel(workbench: Workbench, plan: Declared, key: string): WebviewPanel {
  const panel = window.createWebviewPanel(
    "drillwright.card",
    l10n.t("Card: {0}", shown(plan.name)),
    { viewColumn: ViewColumn.Beside, preserveFocus: true },
    { enableScripts: false, localResourceRoots: [], enableFindWidget: true },
  );
  panels.set(key, panel);
  const follows = () => void follow(workbench, plan, panel);
  const following = Disposable.from(
    workbench.server.hear(projectChanged, follows),
    panel.onDidChangeViewState(follows), // what changed while it was hidden
  );
  panel.onDidDispose(() => {
    panels.delete(key);
    following.dispose();
  });
  return panel;
}

/** A plan with mistakes leaves the last card as it is: the editor says why. */
async function follow({ server, output }: Workbench, plan: Declared, panel: WebviewPanel): Promise<void> {
  if (!panel.visible || !server.isRunning) return;
  try {
    const card = await server.ask(planCard, { plan });
    if (card?.page != null && panel.visible) fill(panel, card.page);
  } catch (error) {
    output.warn(`The card was not renewed: ${String(error)}`);
  }
}

function fill(panel: WebviewPanel, page: string): void {
  if (panel.webview.html !== page) panel.webview.html = page;
}
