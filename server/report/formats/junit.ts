/**
 * Score reports as JUnit XML, for programs that collect test results: a suite a session, a case a goal. Missed is a
 * failure; undecided and not measured are skipped, with the reason; data that could not be read is an error. No duration is told: none was measured.
 */
import { plural } from "../../../shared/plural.ts";
import type { BlockResult, CriterionResult, ScoreReport } from "../../../shared/score-report.ts";
import type { DataFinding } from "../../../shared/session-data.ts";
import { inWords } from "../../../shared/verdict.ts";
import { type Content, html, type Markup } from "../html/markup.ts";
import { placeOf, rowsText } from "../places.ts";
import type { NotScored } from "../score-output.ts";
import { seen } from "../sections/goal.ts";
import { sessionTitle } from "../summary.ts";

const MOST_ROWS = 20;

export function reportsJunit(reports: readonly ScoreReport[], notScored: readonly NotScored[]): string {
  const suites = [...reports.map(suite), ...notScored.map(brokenSuite)];
  return `<?xml version="1.0" encoding="UTF-8"?>\n${html`<testsuites name="drillwright">
${suites}</testsuites>`}\n`;
}

function suite(report: ScoreReport): Markup {
  const { plan, player, session, blocks } = report;
  const goals = blocks.flatMap(({ criteria }) => criteria);
  const unread = report.findings.filter(({ severity }) => severity === "error");
  const count = (...verdicts: readonly CriterionResult["verdict"][]) =>
    goals.filter(({ verdict }) => verdicts.includes(verdict)).length;
  return html`<testsuite name="${`${plan.name}: ${sessionTitle(report)}`}" tests="${goals.length + unread.length}" failures="${count("missed")}" errors="${unread.length}" skipped="${count("undecided", "not-measured")}"${session.date === null ? null : html` timestamp="${session.date}T00:00:00"`}>
<properties>
${property("plan", placeOf(plan.location))}${property("player", player.name)}${property("plan sha256", plan.sha256)}${property("plan revision", plan.revision)}${report.data.map(({ file, sha256 }) => property(`data ${file}`, sha256))}</properties>
${blocks.map((block) => block.criteria.map((goal) => goalCase(goal, block, plan.name)))}${unread.map(unreadCase)}</testsuite>
`;
}

function property(name: string, value: string | null): Content {
  return value === null ? null : html`<property name="${name}" value="${value}"/>\n`;
}

function goalCase(goal: CriterionResult, block: BlockResult, plan: string): Markup {
  const { verdict, evidence, location } = goal;
  const expected = `expected ${evidence.required}, observed ${seen(evidence)}`;
  const reason = `${inWords(verdict)}: ${evidence.settles ?? seen(evidence)}`;
  const lines = evidenceLines(goal, placeOf(location));
  return html`<testcase classname="${plan}.${block.name}" name="${goal.text}">
${verdict === "missed" ? html`<failure type="missed" message="${expected}">${lines}</failure>` : verdict === "met" ? html`<system-out>${lines}</system-out>` : html`<skipped message="${reason}"/><system-out>${lines}</system-out>`}
</testcase>
`;
}

function unreadCase({ code, file, line, message }: DataFinding): Markup {
  return html`<testcase classname="${file}" name="is read">
<error type="${code}" message="${message}">${line === null ? file : `${file}:${line}`}</error>
</testcase>
`;
}

function evidenceLines({ evidence, parts }: CriterionResult, place: string): string {
  const { required, interval, rows, shotsUsed, cautions, isEstimate } = evidence;
  return [
    place,
    `expected: ${required}`,
    `observed: ${evidence.observed}`,
    `made of ${plural(shotsUsed, "shot")}`,
    ...(interval === null ? [] : [`interval: ${interval.text}, ${interval.method}`]),
    ...(rows.length === 0 ? [] : [`rows: ${rowsText(rows, MOST_ROWS)}`]),
    ...(isEstimate ? ["an estimate: a model had a part in it"] : []),
    ...cautions,
    ...parts.map((part) => `${inWords(part.verdict)}: ${part.text}: ${part.evidence.observed}`),
  ].join("\n");
}

/** A session that could not be scored is an error of its own. */
function brokenSuite({ session, message, reason, location }: NotScored): Markup {
  return html`<testsuite name="${session}" tests="1" failures="0" errors="1" skipped="0">
<testcase classname="${session}" name="is scored">
<error type="${reason}" message="${message}">${placeOf(location)}</error>
</testcase>
</testsuite>
`;
}
