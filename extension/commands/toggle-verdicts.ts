import { ConfigurationTarget, workspace } from "vscode";
import { spotOf } from "../drill-document.ts";
import type { Workbench } from "../workbench.ts";

const SETTING = "verdicts.show";

/** Hides every verdict, or shows them again: for the workspace, or everywhere where none is open. */
export async function toggleVerdicts(_workbench: Workbench, given?: unknown): Promise<void> {
  const settings = workspace.getConfiguration("drillwright", spotOf(given)?.uri);
  const isShown = settings.get(SETTING, true);
  const target =
    workspace.workspaceFolders === undefined ? ConfigurationTarget.Global : ConfigurationTarget.Workspace;
  // Back to what holds elsewhere, where that is the same: a setting that says nothing new is clutter.
  await settings.update(SETTING, undefined, target);
  const elsewhere = workspace.getConfiguration("drillwright", spotOf(given)?.uri);
  if (elsewhere.get(SETTING, true) === isShown) await elsewhere.update(SETTING, !isShown, target);
}
