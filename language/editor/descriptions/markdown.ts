/** Pieces of the Markdown that hovers and completion lists show. */
import type { AstNode } from "langium";
import { textOf } from "../../lowering/place.ts";

/** What is written of a part of a file; an ellipsis while it is missing, as any part can be that is being typed. */
export function written(node: AstNode | undefined): string {
  return node === undefined ? "…" : textOf(node);
}

/** A text of the user's, with what Markdown would read as its own taken literally. */
export function plain(text: string | undefined): string {
  return (text ?? "…").replace(/[\\`*_[\]<>#|~]/g, "\\$&");
}

export function code(text: string): string {
  return text.includes("`") ? `\`\` ${text} \`\`` : `\`${text}\``;
}

/** A doc comment; where its content comes from stands in a paragraph of its own. */
export function documented(documentation: string): string {
  return documentation.replace(/\n +/g, "\n").replace(/\n(?=Source: )/, "\n\n");
}

/** How something is declared, coloured as in a file. */
export function declared(text: string): string {
  return `\`\`\`drillwright\n${text}\n\`\`\``;
}

/** Parts set apart by empty lines; those that say nothing are left out. */
export function paragraphs(...parts: readonly (string | undefined)[]): string {
  return parts.filter(Boolean).join("\n\n");
}

export function list(items: readonly (string | undefined)[]): string {
  return items
    .filter(Boolean)
    .map((item) => `- ${item}`)
    .join("\n");
}

/** `a`, `a and b`, `a, b and c`. */
export function inWords(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** The sentence with which a documentation begins. */
export function firstSentence(documentation: string): string {
  const paragraph = documentation.split(/\n\s*\n/, 1)[0] ?? "";
  return (/^[\s\S]*?[.!?](?=\s|$)/.exec(paragraph)?.[0] ?? paragraph).replace(/\s+/g, " ").trim();
}
