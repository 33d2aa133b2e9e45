import { commands, Disposable, l10n, window } from "vscode";
import { COMMANDS, type CommandName } from "../shared/commands.ts";
import { createSample } from "./commands/create-sample.ts";
import { getStarted } from "./commands/get-started.ts";
import { importTable } from "./commands/import-table.ts";
import { newCurriculum } from "./commands/new-curriculum.ts";
import { newDrill } from "./commands/new-drill.ts";
import { newPlan } from "./commands/new-plan.ts";
import { newSession } from "./commands/new-session.ts";
import { openCard } from "./commands/open-card.ts";
import { openPlan } from "./commands/open-plan.ts";
import { openReport } from "./commands/open-report.ts";
import { pickSession } from "./commands/pick-session.ts";
import { restartServer } from "./commands/restart-server.ts";
import { saveCard } from "./commands/save-card.ts";
import { saveReport } from "./commands/save-report.ts";
import { scoreSession } from "./commands/score-session.ts";
import { showOutput } from "./commands/show-output.ts";
import { showRows } from "./commands/show-rows.ts";
import { showSession } from "./commands/show-session.ts";
import { toggleVerdicts } from "./commands/toggle-verdicts.ts";
import type { Workbench } from "./workbench.ts";

/** What a command answers is for those who call it by its id. */
type Run = (workbench: Workbench, ...given: never[]) => unknown;

const RUN: Readonly<Record<CommandName, Run>> = {
  scoreSession,
  pickSession,
  showRows,
  openReport,
  saveReport,
  openCard,
  saveCard,
  showSession,
  toggleVerdicts,
  getStarted,
  createSample,
  openPlan,
  newPlan,
  newDrill,
  newSession,
  newCurriculum,
  importTable,
  showOutput,
  restartServer,
};

/** Registers every command. One that fails says so, and leads to the log. */
export function registerCommands(workbench: Workbench): Disposable {
  const names = Object.keys(RUN) as CommandName[];
  return Disposable.from(
    ...names.map((name) =>
      commands.registerCommand(COMMANDS[name].id, async (...given: never[]) => {
        try {
          return await RUN[name](workbench, ...given);
        } catch (error) {
          void tellFailure(workbench, name, error);
          return undefined;
        }
      }),
    ),
  );
}

async function tellFailure({ server, output }: Workbench, name: CommandName, error: unknown): Promise<void> {
  const reason = error instanceof Error ? error.message : String(error);
  output.error(`${COMMANDS[name].id}: ${reason}`);
  const remedies = server.isRunning ? [COMMANDS.showOutput] : [COMMANDS.restartServer, COMMANDS.showOutput];
  const remedy = await window.showErrorMessage(
    l10n.t("“{0}” failed: {1}", l10n.t(COMMANDS[name].title), reason),
    ...remedies.map(({ id, title }) => ({ id, title: l10n.t(title) })),
  );
  if (remedy !== undefined) await commands.executeCommand(remedy.id);
}
