import { l10n, window } from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { planCard } from "../../shared/protocol/plan-card.ts";
import { sessions } from "../../shared/protocol/sessions.ts";
import { spotOf } from "../drill-document.ts";
import { planAt } from "../score-texts.ts";
import { cardPage } from "../views/cards.ts";
import type { Workbench } from "../workbench.ts";

/** Opens the card of the plan in the editor beside it. */
export async function openCard(workbench: Workbench, given?: unknown): Promise<void> {
  const card = await cardFor(workbench, given);
  if (card !== undefined) workbench.cards.show(card.plan, cardPage(card.plan.name, card.page));
}

/** The card of the plan at the cursor, else of the first the document is about. Says so where there is none. */
export async function cardFor(
  { server }: Workbench,
  given: unknown,
): Promise<{ readonly plan: Declared; readonly page: string } | undefined> {
  const spot = spotOf(given);
  const plans = spot === undefined ? [] : await server.ask(sessions, { file: spot.uri.toString() });
  const plan = spot && planAt(plans, spot.uri.toString(), spot.line)?.plan;
  const card = plan === undefined ? null : await server.ask(planCard, { plan });
  if (plan === undefined || card === null) {
    void window.showInformationMessage(l10n.t("Open a plan to see its card."));
  } else if (card.page === null) {
    void window.showWarningMessage(card.problem ?? "");
  } else {
    return { plan, page: card.page };
  }
  return undefined;
}
