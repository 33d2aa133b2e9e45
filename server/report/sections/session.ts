/** Whose practice it was, against which plan, and what came of it. */
import type { ScoreReport } from "../../../shared/score-report.ts";
import { placeOf } from "../places.ts";
import { type Detail, remark, type Section } from "../section.ts";
import { goalSummary, sessionTitle } from "../summary.ts";
import { handInWords } from "../words.ts";
import { shortHash } from "./data.ts";

export function sessionSection(report: ScoreReport): Section {
  const { plan, player, data, instrument } = report;
  const shots = data.reduce((sum, file) => sum + file.shots, 0);
  return {
    title: sessionTitle(report),
    remark: shots === 0 ? "no shots, so nothing is scored" : goalSummary(report),
    mark: report.verdict,
    entries: [
      remark(`plan "${plan.name}"`, placeOf(plan.location), planVersion(report)),
      remark(`player "${player.name}", ${handInWords(player.hand)}`),
      ...(instrument === null ? [] : [remark(`accuracy of readings as stated for "${instrument}"`)]),
    ],
  };
}

/** Which wording of the plan was scored: two reports with the same content hash asked the same. */
export function planVersion({ plan: { sha256, revision } }: ScoreReport): Detail[] {
  return [
    ...(sha256 === null ? [] : [{ label: "content", text: `SHA-256 ${shortHash(sha256)}` }]),
    ...(revision === null ? [] : [{ label: "revision", text: revision }]),
  ];
}
