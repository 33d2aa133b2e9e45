/** The card of a plan for the range: what to hit, what to think of, what to tick. For paper, a page or two. */

import { CARE } from "../../../shared/care.ts";
import type { Plan } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { html, type Markup, said } from "../html/markup.ts";
import { page } from "../html/page.ts";
import { blockCard, box, minutes } from "./block.ts";

/** One page of text a plan, one after the other. */
export function cardsHtml(plans: readonly Plan[]): string {
  const [only, another] = plans;
  const title = only === undefined || another !== undefined ? "Practice cards" : only.name;
  return page(
    title,
    html`<main>
${plans.map(cardMarkup)}</main>`,
  );
}

function cardMarkup(plan: Plan): Markup {
  const { name, intent, clubs, time, blocks, cautions, limits, next } = plan;
  const facts = [
    ...(clubs.length === 0 ? [] : [clubs.join(", ")]),
    ...(time === null ? [] : [minutes(time)]),
    shotsOf(plan),
  ];
  return html`<article class="card">
<header>
<h1>${said(name)}</h1>
<p>${facts.join(" · ")}</p>
${intent === null ? null : html`<p>${said(intent)}</p>`}
<p class="fill">Player <span class="blank"></span> Date <span class="blank"></span> Session <span class="blank"></span></p>
</header>
<aside class="care" aria-label="Take care"><p>${CARE}</p>
${listOf([
  ...cautions,
  ...limits.map(
    ({ count, fullEffort }) =>
      `No more than ${count} ${fullEffort ? "full-effort " : ""}swings in this session.`,
  ),
])}</aside>
${blocks.map((block, place) => blockCard(block, place + 1))}
${
  next.length === 0
    ? null
    : html`<section>
<h2>What next?</h2>
<ul class="ticks">${next.map(({ text }) => html`<li>${box()} ${said(text)}</li>\n`)}</ul>
</section>`
}
<section>
<h2>What I noticed</h2>
<p class="line"></p><p class="line"></p>
</section>
</article>
`;
}

function listOf(texts: readonly string[]): Markup {
  if (texts.length === 0) return html``;
  return html`<ul>${texts.map((text) => html`<li>${said(text)}</li>\n`)}</ul>`;
}

/** `54 shots`, or `at least 54 shots` where a block is open. */
function shotsOf({ blocks }: Plan): string {
  const shots = blocks.flatMap((block) => block.shots);
  const total = plural(
    shots.reduce((sum, { count }) => sum + count, 0),
    "shot",
  );
  return shots.some(({ open }) => open) ? `at least ${total}` : total;
}
