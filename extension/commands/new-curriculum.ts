import { l10n, SnippetString, Uri, window, workspace } from "vscode";
import { type DeclaredAt, project } from "../../shared/protocol/project.ts";
import { newDocument, usesIn } from "../new-files/new-document.ts";
import { curriculumTemplate } from "../new-files/templates.ts";
import { shownBesideIcons } from "../shown-text.ts";
import type { Workbench } from "../workbench.ts";

/** Begins a curriculum: asks for its plans, and where to put the file. */
export async function newCurriculum({ server }: Workbench): Promise<void> {
  const { plans } = await server.ask(project, null);
  if (plans.length === 0) {
    void window.showInformationMessage(
      l10n.t("No file of this workspace declares a plan. Create the sample folder, or begin a new plan."),
    );
    return;
  }
  const title = l10n.t("New Curriculum");
  const steps = await chooseSteps(title, plans);
  if (steps === undefined || steps.length === 0) return;
  const document = await newDocument(title, "curricula", "curriculum.drill", steps[0]?.file);
  if (document === undefined) return;
  const uses = usesIn(
    document,
    steps.map(({ file }) => file),
  );
  const editor = await window.showTextDocument(document);
  await editor.insertSnippet(
    new SnippetString(curriculumTemplate({ uses, steps: steps.map(({ name }) => name) })),
  );
}

async function chooseSteps(
  title: string,
  plans: readonly DeclaredAt[],
): Promise<readonly DeclaredAt[] | undefined> {
  const items = plans.map((plan) => ({
    label: shownBesideIcons(plan.name),
    description: workspace.asRelativePath(Uri.parse(plan.file)),
    plan,
  }));
  const chosen = await window.showQuickPick(items, {
    title,
    placeHolder: l10n.t("Which plans are its steps? Their order can be changed in the text."),
    canPickMany: true,
    matchOnDescription: true,
  });
  return chosen?.map(({ plan }) => plan);
}
