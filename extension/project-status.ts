import { Disposable, LanguageStatusSeverity, l10n, languages } from "vscode";
import { COMMANDS } from "../shared/commands.ts";
import { type Project, project } from "../shared/protocol/project.ts";
import { projectChanged } from "../shared/protocol/project-changed.ts";
import { LANGUAGE_ID } from "./drill-document.ts";
import type { LanguageServer } from "./language-server.ts";
import { Soon } from "./soon.ts";
import type { DrawnProjectStatus } from "./testing-api.ts";

/** How long nothing must have changed before files are counted anew, in milliseconds. */
const PAUSE = 400;

/** The item, and what it says. */
export interface ProjectStatus extends Disposable {
  readonly drawn: DrawnProjectStatus;
}

/** Says beside the language of a file what was read with it, so that nobody wonders why something is not found. */
export function showProjectStatus(server: LanguageServer): ProjectStatus {
  const item = languages.createLanguageStatusItem("drillwright.project", { language: LANGUAGE_ID });
  item.name = l10n.t("Drillwright Files");

  const showWaiting = () => {
    item.busy = true;
    item.severity = LanguageStatusSeverity.Information;
    item.text = "Drillwright";
    item.detail = "";
    item.command = undefined;
  };
  const show = (found: Project) => {
    item.busy = false;
    item.severity = LanguageStatusSeverity.Information;
    item.text = l10n.t("Plans: {0} · sessions: {1}", found.plans.length, found.sessions.length);
    item.detail = l10n.t("Files read: {0}", found.files);
    item.command = { command: COMMANDS.showOutput.id, title: l10n.t(COMMANDS.showOutput.title) };
  };
  const showStopped = () => {
    item.busy = false;
    item.severity = LanguageStatusSeverity.Warning;
    item.text = l10n.t("The language server does not run.");
    item.detail = "";
    item.command = { command: COMMANDS.restartServer.id, title: l10n.t(COMMANDS.restartServer.title) };
  };
  showWaiting();
  const notTold = () => {
    if (!server.isRunning) showStopped();
  };
  const look = new Soon(() => void server.ask(project, null).then(show, notTold), PAUSE);
  const subscriptions = Disposable.from(
    item,
    look,
    server.hear(projectChanged, ({ declarations }) => {
      if (declarations || item.busy) look.ask();
    }),
    server.onDidStart(showWaiting),
    server.onDidStop(showStopped),
  );
  return {
    get drawn() {
      const { text, detail = "", busy, command } = item;
      return { text, detail, busy, command: command?.command ?? "" };
    },
    dispose: () => subscriptions.dispose(),
  };
}
