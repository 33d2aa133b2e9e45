/** Markup that is safe by how it is made: whatever is put into it is escaped, unless it is markup itself. */

/**
 * What is no part of any text, and in XML an error (tabs and line ends are left alone), and characters that turn the
 * direction of writing around, by which a text can look like another.
 */
const UNSHOWN = /(?![\t\n\r])\p{Cc}|\p{Cs}|[\uFFFE\uFFFF\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** A text as it may stand in markup, in content and in quoted attributes, of HTML and of XML. */
export function escaped(text: string): string {
  return text.replace(UNSHOWN, "\uFFFD").replace(/[&<>"']/g, (character) => ENTITIES[character] ?? "");
}

export class Markup {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  toString(): string {
    return this.text;
  }
}

export type Content = string | number | Markup | null | readonly Content[];

/** html`<p>${text}</p>`: what is put in is escaped, markup is kept, lists follow one another, null is nothing. */
export function html(parts: TemplateStringsArray, ...contents: readonly Content[]): Markup {
  return new Markup(parts.map((part, index) => part + textOf(contents[index] ?? null)).join(""));
}

function textOf(content: Content): string {
  if (content === null) return "";
  if (content instanceof Markup) return content.text;
  if (typeof content === "object") return content.map(textOf).join("");
  return escaped(String(content));
}

/** A text that somebody wrote: whichever way it is written, it turns nothing around it. */
export function said(text: string): Markup {
  return html`<bdi>${text}</bdi>`;
}
