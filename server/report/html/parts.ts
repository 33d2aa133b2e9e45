/** Verdicts, details and whole sections as markup. */
import { type Detail, type Entry, type Mark, markWords, type Section } from "../section.ts";
import { html, type Markup, said } from "./markup.ts";

/** Sign and word, never the colour alone. */
export function badge(mark: Mark): Markup {
  return html`<span class="verdict ${mark}">${markWords(mark)}</span>`;
}

export function details(list: readonly Detail[]): Markup {
  if (list.length === 0) return html``;
  return html`<dl>${list.map(({ label, text }) => html`<dt>${label}</dt><dd>${said(text)}</dd>\n`)}</dl>`;
}

export function place(text: string | null): Markup {
  return text === null ? html`` : html` <span class="place">(${said(text)})</span>`;
}

/** A section of remarks. */
export function sectionMarkup({ title, remark, mark, entries }: Section): Markup {
  return html`<section>
<h2>${said(title)}${mark === null ? null : html` ${badge(mark)}`}</h2>
${remark === null ? null : html`<p>${remark}</p>`}<ul>${entries.map(entryMarkup)}</ul>
</section>
`;
}

function entryMarkup({ mark, text, place: where, details: list, parts }: Entry): Markup {
  return html`<li>${mark === null ? null : html`${badge(mark)} `}${said(text)}${place(where)}${details(list)}${parts.length === 0 ? null : html`<ul>${parts.map(entryMarkup)}</ul>`}</li>
`;
}
