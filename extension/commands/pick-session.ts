import { l10n, type QuickPickItem, Uri, window } from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { type PlanSessions, type PracticedSession, sessions } from "../../shared/protocol/sessions.ts";
import { spotOf } from "../drill-document.ts";
import { noSessionText, planIn } from "../score-texts.ts";
import { sessionLabel } from "../session-label.ts";
import { shown, shownBesideIcons } from "../shown-text.ts";
import type { Workbench } from "../workbench.ts";

interface SessionItem extends QuickPickItem {
  /** Null for the latest. */
  readonly session: PracticedSession | null;
}

/** Asks which session to show on a plan: the one a code lens gives, else the one at the cursor. */
export async function pickSession({ server, picked }: Workbench, given?: Declared | Uri): Promise<void> {
  const plan = given instanceof Uri ? undefined : given;
  const spot = spotOf(given);
  const file = plan?.file ?? spot?.uri.toString();
  if (file === undefined) {
    void window.showInformationMessage(l10n.t("Open a plan or a session to pick what is shown on it."));
    return;
  }
  const plans = await server.ask(sessions, { file });
  const chosen = plan
    ? plans.find((each) => each.plan.file === plan.file && each.plan.name === plan.name)
    : await choosePlan(plans, file, spot?.line ?? 0);
  if (chosen === undefined) {
    if (plans.length === 0) void window.showInformationMessage(l10n.t("This file is about no plan."));
    return;
  }
  if (chosen.sessions.length === 0) {
    void window.showInformationMessage(noSessionText(chosen.plan.name, l10n.t));
    return;
  }
  const item = await window.showQuickPick(items(chosen), {
    title: l10n.t("Session Shown on {0}", shown(chosen.plan.name)),
    placeHolder: l10n.t("Pick the session whose verdicts are shown"),
    matchOnDescription: true,
  });
  if (item === undefined) return;
  const session = item.session && { file: item.session.file, name: item.session.name };
  await picked.pick(chosen.plan, session);
}

async function choosePlan(
  plans: readonly PlanSessions[],
  file: string,
  line: number,
): Promise<PlanSessions | undefined> {
  const here = planIn(plans, file, line);
  if (here !== undefined || plans.length <= 1) return here ?? plans[0];
  const item = await window.showQuickPick(
    plans.map((each) => ({ label: shownBesideIcons(each.plan.name), each })),
    { title: l10n.t("Plan to Pick a Session for") },
  );
  return item?.each;
}

function items({ sessions, shown: current, picked }: PlanSessions): SessionItem[] {
  const mark = (isShown: boolean) => (isShown ? "$(check) " : "");
  return [
    {
      label: `${mark(!picked)}${l10n.t("The latest session")}`,
      description: shownBesideIcons(sessions[0]?.name ?? ""),
      session: null,
    },
    ...sessions.map((session) => {
      const { label, description } = sessionLabel(session);
      const isPicked = picked && session.file === current?.file && session.name === current.name;
      return { label: mark(isPicked) + label, description, session };
    }),
  ];
}
