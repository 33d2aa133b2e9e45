/** Score reports as text for people. */
import type { ScoreReport } from "../../../shared/score-report.ts";
import { inWords } from "../../../shared/verdict.ts";
import { CAUTION } from "../caution.ts";
import type { Palette } from "../palette.ts";
import { printable } from "../printable.ts";
import { type Entry, type Mark, type Section, SIGNS } from "../section.ts";
import { blockSection } from "../sections/block.ts";
import { dataSection } from "../sections/data.ts";
import { notesSection } from "../sections/notes.ts";
import { sessionSection } from "../sections/session.ts";
import { setAsideSection } from "../sections/set-aside.ts";

export interface TextLimits {
  /** Most rows that are named in one place, and most findings about the data that are listed. */
  readonly rows: number;
  readonly findings: number;
}

export const SHORT: TextLimits = { rows: 8, findings: 10 };
export const COMPLETE: TextLimits = { rows: Infinity, findings: Infinity };

/** Sessions one after the other, their verdicts together where there are several, and a word of care. */
export function reportsText(reports: readonly ScoreReport[], palette: Palette, limits: TextLimits): string {
  if (reports.length === 0) return "";
  const texts = reports.map((report) => reportText(report, palette, limits));
  const together = reports.length > 1 ? [`${palette.strong(verdictCounts(reports))}\n`] : [];
  return [...texts, ...together, `${CAUTION}\n`].join("\n");
}

/** One session. Ends with a line end. */
export function reportText(report: ScoreReport, palette: Palette, limits: TextLimits = SHORT): string {
  const planFile = report.plan.location.file;
  const hasShots = report.data.some(({ shots }) => shots > 0);
  const blocks = hasShots ? report.blocks : []; // a page of "not measured" would say no more
  const sections = [
    sessionSection(report),
    ...blocks.map((block) => blockSection(block, planFile, limits.rows)),
    setAsideSection(report, limits.rows),
    dataSection(report, limits.findings),
    notesSection(report),
  ];
  return sections
    .filter((section) => section !== null)
    .map((section) => `${sectionLines(section, palette).join("\n")}\n`)
    .join("\n");
}

/** `3 sessions scored: 1 met, 2 undecided.` */
function verdictCounts(reports: readonly ScoreReport[]): string {
  const order = ["met", "missed", "undecided", "not-measured", null] as const;
  const counted = order
    .map((wanted) => [wanted, reports.filter(({ verdict }) => verdict === wanted).length] as const)
    .filter(([, count]) => count > 0)
    .map(([verdict, count]) => `${count} ${verdict === null ? "without goals" : inWords(verdict)}`);
  return `${reports.length} sessions scored: ${counted.join(", ")}.`;
}

/** Width of the column that holds a verdict, and of the one that holds what a detail is about. */
const MARK_WIDTH = 16;
const LABEL_WIDTH = 10;

function sectionLines({ title, remark, mark, entries }: Section, palette: Palette): string[] {
  const heading = [
    palette.strong(printable(title)),
    ...(mark === null ? [] : [markText(mark, palette)]),
    ...(remark === null ? [] : [printable(remark)]),
  ];
  return [heading.join("  "), ...entries.flatMap((entry) => entryLines(entry, palette))];
}

function entryLines({ mark, text, place, details }: Entry, palette: Palette): string[] {
  const sign =
    mark === null
      ? ""
      : `${markText(mark, palette)}${" ".repeat(Math.max(1, MARK_WIDTH - wordsOf(mark).length))}`;
  const where = place === null ? "" : `  ${palette.faint(`(${printable(place)})`)}`;
  return [
    `  ${sign}${printable(text)}${where}`,
    ...details.map(
      (detail) => `      ${palette.faint(detail.label.padEnd(LABEL_WIDTH))}${printable(detail.text)}`,
    ),
  ];
}

function markText(mark: Mark, palette: Palette): string {
  return paintOf(mark, palette)(wordsOf(mark));
}

/** Sign and word: `✓ met`. */
function wordsOf(mark: Mark): string {
  return `${SIGNS[mark]} ${mark === "error" || mark === "warning" ? mark : inWords(mark)}`;
}

function paintOf(mark: Mark, palette: Palette) {
  switch (mark) {
    case "met":
      return palette.good;
    case "missed":
    case "error":
      return palette.bad;
    case "undecided":
    case "warning":
      return palette.open;
    case "not-measured":
      return palette.faint;
  }
}
