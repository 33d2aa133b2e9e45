import { l10n } from "vscode";
import { savePage } from "../save-page.ts";
import type { Workbench } from "../workbench.ts";
import { cardFor } from "./open-card.ts";

/** Writes the card of the plan in the editor to a file that somebody chooses. */
export async function saveCard(workbench: Workbench, given?: unknown): Promise<void> {
  const card = await cardFor(workbench, given);
  if (card !== undefined) await savePage(l10n.t("Save the Card…"), card.plan.name, card.plan.file, card.page);
}
