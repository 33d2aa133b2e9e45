import { l10n, Uri, window, workspace } from "vscode";
import { type DeclaredAt, project } from "../../shared/protocol/project.ts";
import { startAt } from "../places.ts";
import { shownBesideIcons } from "../shown-text.ts";
import type { Workbench } from "../workbench.ts";

/** Opens a plan of the workspace; asks which, where there are several. */
export async function openPlan({ server }: Workbench): Promise<void> {
  const { plans } = await server.ask(project, null);
  if (plans.length === 0) {
    void window.showInformationMessage(
      l10n.t("No file of this workspace declares a plan. Create the sample folder, or begin a new plan."),
    );
    return;
  }
  const plan = plans.length === 1 ? plans[0] : await choose(plans);
  if (plan === undefined) return;
  await window.showTextDocument(Uri.parse(plan.file), { selection: startAt(plan.range) });
}

async function choose(plans: readonly DeclaredAt[]): Promise<DeclaredAt | undefined> {
  const items = plans.map((plan) => ({
    label: shownBesideIcons(plan.name),
    description: workspace.asRelativePath(Uri.parse(plan.file)),
    plan,
  }));
  const item = await window.showQuickPick(items, {
    title: l10n.t("Open a Plan"),
    placeHolder: l10n.t("Which plan?"),
    matchOnDescription: true,
  });
  return item?.plan;
}
