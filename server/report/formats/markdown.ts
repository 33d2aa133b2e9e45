/** Score reports as Markdown (CommonMark), for places that show it. */
import { CAUTION } from "../../../shared/care.ts";
import type { ScoreReport } from "../../../shared/score-report.ts";
import { printable } from "../printable.ts";
import type { ReportedSession } from "../reported-session.ts";
import { type Entry, markWords, type Section } from "../section.ts";
import { movedSection } from "../sections/moved.ts";
import { type Limits, SHORT, sectionsOf } from "../sections.ts";
import { verdictCounts } from "../summary.ts";

export function reportsMarkdown(sessions: readonly ReportedSession[], limits: Limits = SHORT): string {
  const texts = sessions.map((session) => reportMarkdown(session, limits));
  return [...texts, underMarkdown(sessions.map(({ report }) => report))].join("\n");
}

/** What stands under the sessions: their verdicts together where there are several, and a word of care. */
export function underMarkdown(reports: readonly Pick<ScoreReport, "verdict">[]): string {
  const together = reports.length > 1 ? [`**${plainly(verdictCounts(reports))}**\n`] : [];
  return [...together, `> ${plainly(CAUTION)}\n`].join("\n");
}

/** One session. Ends with a line end. */
export function reportMarkdown(session: ReportedSession, limits: Limits): string {
  const sections = sectionsOf(session, limits);
  const moved = movedSection(session);
  const [head, ...rest] = moved === null ? sections : [...sections, moved];
  const texts = [
    ...(head === undefined ? [] : [sectionMarkdown(head, "#")]),
    ...rest.map((section) => sectionMarkdown(section, "##")),
  ];
  return texts.join("\n");
}

function sectionMarkdown({ title, remark, mark, entries }: Section, level: "#" | "##"): string {
  const heading = `${level} ${plainly(title)}${mark === null ? "" : `: ${markWords(mark)}`}`;
  return [
    heading,
    "",
    ...(remark === null ? [] : [plainly(remark), ""]),
    ...entries.flatMap((entry) => entryLines(entry, "")),
    ...(entries.length === 0 ? [] : [""]),
  ].join("\n");
}

function entryLines({ mark, text, place, details, parts }: Entry, indent: string): string[] {
  const sign = mark === null ? "" : `**${markWords(mark)}** `;
  const where = place === null ? "" : ` (${plainly(place)})`;
  return [
    `${indent}- ${sign}${plainly(text)}${where}`,
    ...details.map((detail) => `${indent}  - ${plainly(detail.label)}: ${plainly(detail.text)}`),
    ...parts.flatMap((part) => entryLines(part, `${indent}  `)),
  ];
}

/** A text on one line in which nothing means anything to Markdown or HTML. */
function plainly(text: string): string {
  return printable(text)
    .replace(/[\\`*_[\]#|~!<>&]/g, "\\$&")
    .replace(/^(\s*)([-+]|\d+[.)])(?=\s)/, "$1\\$2");
}
