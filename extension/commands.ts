import { commands, Disposable, l10n, window } from "vscode";
import { COMMANDS, type CommandName } from "../shared/commands.ts";
import { pickSession } from "./commands/pick-session.ts";
import { restartServer } from "./commands/restart-server.ts";
import { scoreSession } from "./commands/score-session.ts";
import { showOutput } from "./commands/show-output.ts";
import { showRows } from "./commands/show-rows.ts";
import type { Workbench } from "./workbench.ts";

type Run = (workbench: Workbench, ...given: never[]) => void | Promise<void>;

const RUN: Readonly<Record<CommandName, Run>> = {
  scoreSession,
  pickSession,
  showRows,
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
          await RUN[name](workbench, ...given);
        } catch (error) {
          await tellFailure(workbench, name, error);
        }
      }),
    ),
  );
}

async function tellFailure({ output }: Workbench, name: CommandName, error: unknown): Promise<void> {
  output.error(`${COMMANDS[name].id}:`, error instanceof Error ? error : String(error));
  const showLog = l10n.t("Show Log");
  const reason = error instanceof Error ? error.message : String(error);
  const answer = await window.showErrorMessage(
    l10n.t("“{0}” failed: {1}", COMMANDS[name].title, reason),
    showLog,
  );
  if (answer === showLog) output.show();
}
