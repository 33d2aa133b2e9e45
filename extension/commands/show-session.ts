import { l10n, Range, Uri, window } from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { project } from "../../shared/protocol/project.ts";
import type { Workbench } from "../workbench.ts";

/** Opens the plan that a session practised, and shows the session on it. The view of players says which. */
export async function showSession(
  { server, picked }: Workbench,
  of?: { readonly session?: Declared },
): Promise<void> {
  const given = of?.session;
  if (given === undefined) return;
  const { sessions, plans } = await server.ask(project, null);
  const session = sessions.find(({ file, name }) => file === given.file && name === given.name);
  const plan = plans.find(({ file, name }) => file === session?.plan?.file && name === session.plan.name);
  if (plan === undefined) {
    void window.showInformationMessage(l10n.t("The plan of this session is not known."));
    return;
  }
  const { start } = plan.range;
  await window.showTextDocument(Uri.parse(plan.file), {
    selection: new Range(start.line, start.character, start.line, start.character),
  });
  await picked.pick({ file: plan.file, name: plan.name }, { file: given.file, name: given.name });
}
