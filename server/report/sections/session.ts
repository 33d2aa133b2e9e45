/** Whose practice it was, against which plan, and what came of it. */
import type { ScoreReport } from "../../../shared/score-report.ts";
import { placeOf } from "../places.ts";
import { type Detail, remark, type Section } from "../section.ts";
import { goalSummary, hasShots, sessionTitle } from "../summary.ts";
import { handInWords } from "../words.ts";
import { shortHash } from "./data.ts";

export function sessionSection(report: ScoreReport): Section {
  const { plan, player, instrument } = report;
  return {
    title: sessionTitle(report),
    remark: hasShots(report) ? goalSummary(report) : "no shots, so nothing is scored",
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
