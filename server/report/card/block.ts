/** One block on a card. */
import type { Block, Criterion, Shots } from "../../../shared/plan-model.ts";
import { html, type Markup, said } from "../html/markup.ts";
import { groupHead } from "../sections/goal.ts";
import { shotsInWords } from "../words.ts";
import { windowsOf } from "./windows.ts";

/** More boxes than this nobody ticks. */
const MOST_BOXES = 60;
/** Boxes stand in groups of so many, to be counted at a glance. */
const GROUP = 5;

export function blockCard(block: Block, number: number): Markup {
  const { name, kind, time, shots, changes, cues, cautions, targets, requirements, leaveOut, success } =
    block;
  const lines: [label: string, texts: readonly string[]][] = [
    ["change", changes.map((change) => `${change.kind}: ${change.text}`)],
    ["think of", cues],
    ["target", targets.map(({ text }) => withoutKeyword(text, "target"))],
    ["must hold", requirements.map(({ text }) => withoutKeyword(text, "require"))],
    ["leave out", leaveOut.map(({ text }) => text.replace(/^leave out shots where /, ""))],
    ...windowsOf(block).map(([window, text]): [string, readonly string[]] => [window, [text]]),
    ["careful", cautions],
  ];
  return html`<section class="on-card">
<h2>${number}. ${said(name)} <span class="soft">(${kind}${time === null ? "" : `, ${minutes(time)}`})</span></h2>
${shots.map(shotsLine)}<dl>${lines.map(([label, texts]) => texts.map((text) => html`<dt>${label}</dt><dd>${said(text)}</dd>\n`))}</dl>
${
  success.length === 0
    ? null
    : html`<h3>It counts as done when</h3>
<ul class="ticks">${success.map(goalLine)}</ul>
`
}</section>
`;
}

/** `12 shots with 7-iron at 50 % effort`, and a box for each. */
function shotsLine(shots: Shots): Markup {
  const { count } = shots;
  const boxes = Array.from({ length: Math.ceil(Math.min(count, MOST_BOXES) / GROUP) }, (_, group) => {
    const inGroup = Math.min(GROUP, Math.min(count, MOST_BOXES) - group * GROUP);
    return html`<span class="group">${Array.from({ length: inGroup }, box)}</span>`;
  });
  const more = count > MOST_BOXES ? ` and ${count - MOST_BOXES} more` : "";
  return html`<p><strong>${shotsInWords(shots)}</strong> <span class="boxes">${boxes}</span>${more}</p>\n`;
}

function goalLine(goal: Criterion): Markup {
  if (goal.kind !== "group") return html`<li>${box()} ${said(goal.text)}</li>\n`;
  return html`<li>${box()} ${said(groupHead(goal.text))}<ul class="ticks">${goal.criteria.map(goalLine)}</ul></li>\n`;
}

/** A box to tick. It says nothing that words do not say. */
export function box(): Markup {
  return html`<span class="box" aria-hidden="true"></span>`;
}

function withoutKeyword(text: string, keyword: string): string {
  return text.startsWith(`${keyword} `) ? text.slice(keyword.length + 1) : text;
}

/** `60 min` */
export function minutes(seconds: number): string {
  return `${Number((seconds / 60).toFixed(1))} min`;
}
