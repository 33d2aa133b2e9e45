/** The first thing on the page, for the player: what was the goal, what happened, what next? */

import { CAUTION } from "../../../shared/care.ts";
import { plural } from "../../../shared/plural.ts";
import type { CriterionResult, Verdict } from "../../../shared/score-report.ts";
import type { ReportedSession } from "../reported-session.ts";
import { groupHead } from "../sections/goal.ts";
import { nextWords } from "../sections/next.ts";
import { hasShots } from "../summary.ts";
import { html, type Markup, said } from "./markup.ts";
import { badge } from "./parts.ts";

export function inShort({ report, input }: ReportedSession): Markup {
  const goals = report.blocks.flatMap(({ criteria }) => criteria);
  const { intent, name } = input.plan;
  return html`<section class="short" aria-labelledby="in-short">
<h2 id="in-short">In short</h2>
<h3>What was the goal?</h3>
<p>${said(intent ?? name)}</p>
<h3>What happened?</h3>
<p>${hasShots(report) ? happened(report.load.swings, goals) : "No shots were read, so nothing is scored."}</p>
${LISTED.map((verdict) =>
  goalList(
    verdict,
    goals.filter((goal) => goal.verdict === verdict),
  ),
)}<h3>What next?</h3>
<p>${whatNext(report.next, goals)}</p>
<aside class="care" aria-label="Take care"><p>${CAUTION}</p></aside>
</section>
`;
}

const LISTED = ["met", "missed", "undecided", "not-measured"] as const;

/** `51 swings. 7 of 8 goals met.` */
function happened(swings: number, goals: readonly CriterionResult[]): string {
  if (goals.length === 0) return `${plural(swings, "swing")}. The plan sets no goals.`;
  const met = goals.filter(({ verdict }) => verdict === "met").length;
  const missed = goals.filter(({ verdict }) => verdict === "missed").length;
  const open = goals.length - met - missed;
  return [
    `${plural(swings, "swing")}. You met ${met} of ${plural(goals.length, "goal")}`,
    missed === 0 ? "" : `, missed ${missed}`,
    open === 0 ? "." : `, and ${open === 1 ? "one is" : `${open} are`} not settled yet.`,
  ].join("");
}

function goalList(verdict: Verdict, goals: readonly CriterionResult[]): Markup {
  if (goals.length === 0) return html``;
  return html`<p>${badge(verdict)}</p><ul>${goals.map(
    ({ text, evidence, parts }) =>
      html`<li>${said(parts.length === 0 ? text : `${groupHead(text)}: ${parts.map((part) => part.text).join("; ")}`)}${evidence.brief === "" ? null : html`: <strong>${said(evidence.brief)}</strong>`}</li>`,
  )}</ul>
`;
}

function whatNext(next: ReportedSession["report"]["next"], goals: readonly CriterionResult[]): Markup {
  const settles = goals.find(({ evidence }) => evidence.settles !== null);
  const open =
    settles === undefined
      ? null
      : html` To settle “${said(settles.text)}”: ${said(settles.evidence.settles ?? "")}.`;
  if (next === null) return html`The plan does not say what comes next: talk it over with your coach.${open}`;
  return html`The plan says: <strong>${said(nextWords(next))}</strong>. ${said(next.reason)}${open}`;
}
