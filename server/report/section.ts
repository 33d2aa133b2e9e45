/** What a report says about one thing, before a format gives it a look. */
import type { Verdict } from "../../shared/score-report.ts";
import { inWords } from "../../shared/verdict.ts";

/** What an entry is marked by: a verdict, or how much it matters. */
export type Mark = Verdict | "error" | "warning";

/** The sign of a mark. Always shown beside its word, never alone. */
export const SIGNS: Readonly<Record<Mark, string>> = {
  met: "✓",
  missed: "✗",
  undecided: "?",
  "not-measured": "–",
  error: "✗",
  warning: "!",
};

/** Sign and word: `✓ met`. */
export function markWords(mark: Mark): string {
  return `${SIGNS[mark]} ${mark === "error" || mark === "warning" ? mark : inWords(mark)}`;
}

export interface Section {
  readonly title: string;
  /** Said beside the title. */
  readonly remark: string | null;
  readonly mark: Mark | null;
  readonly entries: readonly Entry[];
}

export interface Entry {
  readonly mark: Mark | null;
  readonly text: string;
  /** Where it was written, or where it was found: `plans/irons.drill:14`. */
  readonly place: string | null;
  readonly details: readonly Detail[];
  /** What it is made of, as a group of goals is of goals. */
  readonly parts: readonly Entry[];
}

/** A part of the evidence under its name: `seen`, `9 of 13 shots on target`. */
export interface Detail {
  readonly label: string;
  readonly text: string;
}

/** An entry that only says something, and where it stands, if anywhere. */
export function remark(text: string, place: string | null = null, details: readonly Detail[] = []): Entry {
  return { mark: null, text, place, details, parts: [] };
}

/** A section that only says things; null where there is nothing to say. */
export function remarks(title: string, texts: readonly string[]): Section | null {
  if (texts.length === 0) return null;
  return { title, remark: null, mark: null, entries: texts.map((text) => remark(text)) };
}
