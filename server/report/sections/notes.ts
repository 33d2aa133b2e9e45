/** What a reader of the whole report should know. */
import type { ScoreReport } from "../../../shared/score-report.ts";
import { remark, type Section } from "../section.ts";

export function notesSection({ notes }: ScoreReport): Section | null {
  if (notes.length === 0) return null;
  return { title: "Notes", remark: null, mark: null, entries: notes.map(remark) };
}
