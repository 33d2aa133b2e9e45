import { commands } from "vscode";
import type { Workbench } from "../workbench.ts";

/** Opens the walkthrough. */
export async function getStarted({ extensionId }: Workbench): Promise<void> {
  await commands.executeCommand("workbench.action.openWalkthrough", `${extensionId}#start`, false);
}
