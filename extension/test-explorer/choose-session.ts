/** Which session the goals of a plan are scored with. */
import { l10n } from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { type PlanSessions, sessions } from "../../shared/protocol/sessions.ts";
import type { LanguageServer } from "../language-server.ts";
import { askInTurn } from "../questions.ts";
import { sessionLabel } from "../session-label.ts";
import { shown } from "../shown-text.ts";

/** Null where nobody practised the plan, undefined where somebody did not say. */
export type ChooseSession = (server: LanguageServer, plan: Declared) => Promise<Declared | null | undefined>;

/** The session that is shown on the plan. */
export const sessionShown: ChooseSession = async (server, plan) =>
  (await sessionsOf(server, plan))?.shown ?? null;

/** The session that somebody picks for this once. */
export const sessionAskedFor: ChooseSession = async (server, plan) => {
  const of = await sessionsOf(server, plan);
  if (of === undefined || of.sessions.length === 0) return null;
  const choices = of.sessions.map((session) => ({ ...sessionLabel(session), answer: session }));
  const placeHolder = l10n.t("Which session is scored?");
  const [session] = (await askInTurn(shown(plan.name), [{ placeHolder, choices }])) ?? [];
  return session;
};

async function sessionsOf(
  server: LanguageServer,
  { file, name }: Declared,
): Promise<PlanSessions | undefined> {
  const all = await server.ask(sessions, { file });
  return all.find(({ plan }) => plan.name === name && plan.file === file);
}
