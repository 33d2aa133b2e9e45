/** Score reports as one page that stands for itself, on a screen and on paper. */
import { html } from "../html/markup.ts";
import { page } from "../html/page.ts";
import { reportMarkup } from "../html/report.ts";
import type { ReportedSession } from "../reported-session.ts";
import { type Limits, SHORT } from "../sections.ts";
import { sessionTitle, verdictCounts } from "../summary.ts";

export function reportsHtml(sessions: readonly ReportedSession[], limits: Limits = SHORT): string {
  const reports = sessions.map(({ report }) => report);
  const [only, another] = reports;
  const title = only === undefined || another !== undefined ? verdictCounts(reports) : sessionTitle(only);
  return page(
    title,
    html`<main>
${sessions.map((session) => reportMarkup(session, limits))}</main>`,
  );
}
