/** Names of clubs and blocks that nobody knows. */

import { nearest } from "../../../shared/nearest.ts";
import type { ScoringInput, Source } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { list, quote, type Report } from "../finding.ts";

/** A text that is not known, and where it was met. */
export interface UnknownText {
  readonly text: string;
  readonly column: string;
  readonly firstLine: number;
  count: number;
}

/** How many different texts are told apart: a column of remarks that is called a club has one on every row. */
const MOST_TEXTS = 1000;

/** Texts of one column that nothing is known by, each reported once. */
export class UnknownNames {
  readonly #texts = new Map<string, UnknownText>();
  readonly #column: string;
  readonly #message: (found: UnknownText) => string;

  constructor(column: string, message: (found: UnknownText) => string) {
    this.#column = column;
    this.#message = message;
  }

  note(text: string, line: number): void {
    const known = this.#texts.get(text);
    if (known !== undefined) known.count++;
    else if (this.#texts.size < MOST_TEXTS)
      this.#texts.set(text, { text, column: this.#column, firstLine: line, count: 1 });
  }

  reportAs(code: "club-unknown" | "block-unknown" | "category-unknown", report: Report): void {
    for (const found of this.#texts.values()) {
      const { text, column, firstLine } = found;
      report({ code, severity: "warning", line: firstLine, column, text, message: this.#message(found) });
    }
  }
}

/** What to say about a text that is no known club. */
export function unknownClub(found: UnknownText, source: Source, { clubs }: ScoringInput): string {
  const names = new Map(
    clubs.flatMap((club) => [club.name, ...club.spellings].map((text) => [text, club.name] as const)),
  );
  const meant = names.get(nearest(found.text, names.keys())[0] ?? "");
  return `${where(found)} is no club that is known${didYouMean(meant)} Say which it is in source ${quote(source.name)}: \`column ${quote(found.column)} is club where ${quote(found.text)} is ${meant ?? "…"}\`.`;
}

/** What to say about a text that is none of the plan's blocks. */
export function unknownBlock(found: UnknownText, { plan }: ScoringInput): string {
  const names = plan.blocks.map((block) => block.name);
  return `${where(found)} is no block of plan ${quote(plan.name)}${didYouMean(nearest(found.text, names)[0])} It has ${list(names)}.`;
}

/** What to say about a text that is none of a metric's names. */
export function unknownCategory(
  found: UnknownText,
  metric: string,
  names: readonly string[],
  source: Source,
): string {
  const meant = nearest(found.text, names)[0];
  return `${where(found)} is no ${metric} that is known${didYouMean(meant)} It is one of ${names.join(", ")}. Say which in source ${quote(source.name)}: \`column ${quote(found.column)} is ${metric} where ${quote(found.text)} is ${meant ?? "…"}\`.`;
}

function where({ text, column, count, firstLine }: UnknownText): string {
  const rows = count === 1 ? "" : `on ${plural(count, "row")}, the first `;
  return `${quote(text)} in column ${quote(column)}, ${rows}in line ${firstLine},`;
}

function didYouMean(name: string | undefined): string {
  return name === undefined ? "." : `; did you mean ${quote(name)}?`;
}
