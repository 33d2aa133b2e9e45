import { type LogOutputChannel, l10n } from "vscode";
import { planCard } from "../../shared/protocol/plan-card.ts";
import { projectChanged } from "../../shared/protocol/project-changed.ts";
import type { LanguageServer } from "../language-server.ts";
import { shown } from "../shown-text.ts";
import type { PageMemory } from "./page-memory.ts";
import { type Page, PagePanels } from "./page-panels.ts";

/** Cards of plans. They follow the plans, saved or not. */
export function cardPanels(server: LanguageServer, memory: PageMemory, output: LogOutputChannel): PagePanels {
  return new PagePanels(
    {
      viewType: "drillwright.card",
      ask: async (plan) => {
        const card = await server.ask(planCard, { plan });
        if (card === null) return null;
        return card.page === null ? (card.problem ?? "") : cardPage(plan.name, card.page);
      },
      hear: (listener) => server.hear(projectChanged, listener),
    },
    server,
    memory,
    output,
  );
}

export function cardPage(plan: string, html: string): Page {
  return { title: l10n.t("Card: {0}", shown(plan)), html };
}
