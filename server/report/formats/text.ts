/** Score reports as text for people. */
import { CAUTION } from "../../../shared/care.ts";
import type { ScoreReport } from "../../../shared/score-report.ts";
import type { Palette } from "../palette.ts";
import { printable } from "../printable.ts";
import type { ReportedSession } from "../reported-session.ts";
import { type Entry, type Mark, markWords, type Section } from "../section.ts";
import { type Limits, SHORT, sectionsOf } from "../sections.ts";
import { verdictCounts } from "../summary.ts";

/** Sessions one after the other, and what stands under them. */
export function reportsText(sessions: readonly ReportedSession[], palette: Palette, limits: Limits): string {
  if (sessions.length === 0) return "";
  const texts = sessions.map((session) => reportText(session, palette, limits));
  return [
    ...texts,
    underText(
      sessions.map(({ report }) => report),
      palette,
    ),
  ].join("\n");
}

/** Their verdicts together where there are several, and a word of care. */
export function underText(reports: readonly Pick<ScoreReport, "verdict">[], palette: Palette): string {
  const together = reports.length > 1 ? [`${palette.strong(verdictCounts(reports))}\n`] : [];
  return [...together, `${CAUTION}\n`].join("\n");
}

/** One session. Ends with a line end. */
export function reportText(session: ReportedSession, palette: Palette, limits: Limits = SHORT): string {
  return sectionsOf(session, limits)
    .map((section) => `${sectionLines(section, palette).join("\n")}\n`)
    .join("\n");
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

function entryLines({ mark, text, place, details, parts }: Entry, palette: Palette): string[] {
  const sign =
    mark === null
      ? ""
      : `${markText(mark, palette)}${" ".repeat(Math.max(1, MARK_WIDTH - markWords(mark).length))}`;
  const where = place === null ? "" : `  ${palette.faint(`(${printable(place)})`)}`;
  return [
    `  ${sign}${printable(text)}${where}`,
    ...details.map(
      (detail) => `      ${palette.faint(detail.label.padEnd(LABEL_WIDTH))}${printable(detail.text)}`,
    ),
    ...parts.flatMap((part) => entryLines(part, palette)).map((line) => `    ${line}`),
  ];
}

function markText(mark: Mark, palette: Palette): string {
  return paintOf(mark, palette)(markWords(mark));
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
