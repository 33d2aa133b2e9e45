import { l10n, window } from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { sessionReport } from "../../shared/protocol/session-report.ts";
import { spotOf } from "../drill-document.ts";
import { noSessionText } from "../score-texts.ts";
import { reportPage } from "../views/reports.ts";
import type { Workbench } from "../workbench.ts";

/** Opens the report on a session beside the plan: the one that the view of players gives, else the one that is shown. */
export async function openReport(workbench: Workbench, given?: unknown): Promise<void> {
  const found = await reportFor(workbench, given);
  if (found !== undefined) workbench.reports.show(found.session, reportPage(found.title, found.page));
}

/** The report on that session. Says so where there is none. */
export async function reportFor(
  workbench: Workbench,
  given: unknown,
): Promise<{ readonly session: Declared; readonly title: string; readonly page: string } | undefined> {
  const session = sessionIn(given) ?? shownSession(workbench, given);
  if (session === undefined) return undefined;
  const report = await workbench.server.ask(sessionReport, { session });
  if (report === null) {
    void window.showInformationMessage(l10n.t("The session is gone."));
  } else if (report.page === null) {
    void window.showWarningMessage(report.problem ?? "");
  } else {
    return { session, title: report.title, page: report.page };
  }
  return undefined;
}

function sessionIn(given: unknown): Declared | undefined {
  const holder = given as { readonly session?: Declared } | undefined;
  return typeof holder?.session?.name === "string" ? holder.session : undefined;
}

/** Says so where there is none. */
function shownSession({ scores }: Workbench, given: unknown): Declared | undefined {
  const spot = spotOf(given);
  const score = spot && scores.at(spot.uri, spot.line);
  if (score === undefined) {
    void window.showInformationMessage(l10n.t("Open a plan or a session to see its report."));
  } else if (score.session === null) {
    void window.showInformationMessage(noSessionText(score.plan.name, l10n.t));
  }
  return score?.session ?? undefined;
}
