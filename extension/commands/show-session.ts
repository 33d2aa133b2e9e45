import { l10n, Uri, window } from "vscode";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";
import { project } from "../../shared/protocol/project.ts";
import { startAt } from "../places.ts";
import type { Workbench } from "../workbench.ts";

/** Opens the plan that a session practised, and shows the session on it. The view of players says which. */
export async function showSession(
  { server, picked }: Workbench,
  of?: { readonly session?: Declared },
): Promise<void> {
  const given = of?.session;
  if (given === undefined) return;
  const { sessions, plans } = await server.ask(project, null);
  const session = sessions.find((each) => keyOf(each) === keyOf(given));
  const practised = session?.plan && keyOf(session.plan);
  const plan = plans.find((each) => keyOf(each) === practised);
  if (plan === undefined) {
    void window.showInformationMessage(l10n.t("The plan of this session is not known."));
    return;
  }
  await window.showTextDocument(Uri.parse(plan.file), { selection: startAt(plan.range) });
  await picked.pick({ file: plan.file, name: plan.name }, { file: given.file, name: given.name });
}
