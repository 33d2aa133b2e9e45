/** Whose practice it was, against which plan, and what came of it. */
import type { ScoreReport } from "../../../shared/score-report.ts";
import { placeOf } from "../places.ts";
import type { Section } from "../section.ts";
import { goalSummary, sessionTitle } from "../summary.ts";

export function sessionSection(report: ScoreReport): Section {
  const { plan, player, data } = report;
  const hand = player.hand === null ? "hand not stated" : `${player.hand}-handed`;
  const shots = data.reduce((sum, file) => sum + file.shots, 0);
  return {
    title: sessionTitle(report),
    remark: shots === 0 ? "no shots, so nothing is scored" : goalSummary(report),
    mark: report.verdict,
    entries: [
      { mark: null, text: `plan "${plan.name}"`, place: placeOf(plan.location), details: [] },
      { mark: null, text: `player "${player.name}", ${hand}`, place: null, details: [] },
    ],
  };
}
