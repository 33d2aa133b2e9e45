import { l10n, ProgressLocation, type Uri, window } from "vscode";
import type { PlanScore } from "../../shared/protocol/plan-score.ts";
import { score } from "../../shared/protocol/score.ts";
import { spotOf } from "../drill-document.ts";
import { goalsText, noSessionText } from "../score-texts.ts";
import type { Workbench } from "../workbench.ts";

/** How long the outcome stands in the status bar, in milliseconds. */
const OUTCOME_STANDS = 8000;

/** Reads the data of a document's sessions again and scores them. */
export async function scoreSession({ server, scores }: Workbench, given?: Uri): Promise<void> {
  const spot = spotOf(given);
  if (spot === undefined) {
    void window.showInformationMessage(l10n.t("Open a plan or a session to score it."));
    return;
  }
  const file = spot.uri.toString();
  await window.withProgress({ location: ProgressLocation.Window, title: l10n.t("Scoring the session") }, () =>
    server.ask(score, { file }),
  );
  tell(scores.at(spot.uri, spot.line));
}

function tell(score: PlanScore | undefined): void {
  if (score === undefined) {
    void window.showInformationMessage(
      l10n.t("There is nothing to score here: the file declares no plan, and no session of one."),
    );
  } else if (score.session === null) {
    void window.showInformationMessage(noSessionText(score.plan.name, l10n.t));
  } else if (score.problem !== null) {
    void window.showWarningMessage(score.problem);
  } else {
    const outcome = `${score.session.name}: ${goalsText(score, l10n.t)}`;
    window.setStatusBarMessage(`$(checklist) ${outcome}`, OUTCOME_STANDS);
  }
}
