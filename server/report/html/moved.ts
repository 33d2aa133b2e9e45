/** What moved with every change that was tried, as tables. */
import type { Hand } from "../../../shared/plan-model.ts";
import { formatReading } from "../../../shared/quantity.ts";
import { differenceInWords, differencesInWords } from "../differences.ts";
import { type ChangeTried, CONFIDENCE, changesTried, type Move } from "../moved.ts";
import type { ReportedSession } from "../reported-session.ts";
import { MOVED_REMARK, nothingToCompare } from "../sections/moved.ts";
import { html, type Markup, said } from "./markup.ts";

/** Nothing where nothing was changed. */
export function movedMarkup(session: ReportedSession): Markup {
  const changes = changesTried(session);
  if (changes.length === 0) return html``;
  const hand = session.input.player.hand ?? "right";
  return html`<section>
<h2>What moved</h2>
${changes.map((change) => changeMarkup(change, hand))}</section>
`;
}

function changeMarkup(tried: ChangeTried, hand: Hand): Markup {
  const { block, change, baseline, moves } = tried;
  const nothing = nothingToCompare(tried);
  if (nothing !== null) return html`<p>${said(block)} (${said(change)}): ${nothing}.</p>\n`;
  const level = `${Math.round(100 * CONFIDENCE)} %`;
  return html`<div class="wide" tabindex="0" role="region" aria-label="What moved in ${block}"><table>
<caption>${said(change)}: from ${said(baseline ?? "")} to ${said(block)}. ${MOVED_REMARK}</caption>
<thead><tr><th scope="col">Measured</th><th scope="col">Before</th><th scope="col">After</th><th scope="col">Difference</th><th scope="col">${level} interval</th><th scope="col">Asked?</th></tr></thead>
<tbody>${moves.map((move) => moveRow(move, hand))}</tbody>
</table></div>
`;
}

function moveRow({ metric, before, after, limits, isAsked, isEstimate }: Move, hand: Hand): Markup {
  const reading = (value: number, shots: number) => `${formatReading(value, metric, hand)} (${shots})`;
  return html`<tr><th scope="row">${metric.name}${isEstimate ? " (estimate)" : ""}</th><td>${reading(before.mean, before.n)}</td><td>${reading(after.mean, after.n)}</td><td>${differenceInWords(after.mean - before.mean, metric, hand)}</td><td>${limits === null ? "too few shots" : differencesInWords(limits, metric, hand)}</td><td>${isAsked ? "a goal" : "exploration"}</td></tr>
`;
}
