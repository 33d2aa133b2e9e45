/**
 * Score reports as SARIF 2.1.0 (OASIS standard of 2020), for programs that collect findings about files: a result a goal,
 * at its line of the plan, with the rows that decided it as related locations. A rule is a verdict.
 */
import type { Location } from "../../../shared/plan-model.ts";
import type { CriterionResult, ScoreReport, Verdict } from "../../../shared/score-report.ts";
import type { DataFinding, Row } from "../../../shared/session-data.ts";
import { inWords } from "../../../shared/verdict.ts";
import type { NotScored } from "../score-output.ts";
import { seen } from "../sections/goal.ts";
import { sessionTitle } from "../summary.ts";

/** Rows that are led to; more would bury the first. */
const MOST_ROWS = 20;

const VERDICTS: readonly Verdict[] = ["met", "missed", "undecided", "not-measured"];

const MEANINGS: Readonly<Record<Verdict, string>> = {
  met: "The shots show that the goal was met.",
  missed: "The shots show that the goal was missed.",
  undecided: "The shots hit so far do not settle whether the goal was met.",
  "not-measured": "The data does not hold what the goal asks about.",
};

/** What SARIF calls each verdict. Only what failed has a level. */
const KINDS = {
  met: { kind: "pass", level: "none" },
  missed: { kind: "fail", level: "warning" },
  undecided: { kind: "open", level: "none" },
  "not-measured": { kind: "open", level: "none" },
} as const satisfies Record<Verdict, object>;

export function reportsSarif(
  reports: readonly ScoreReport[],
  notScored: readonly NotScored[],
  version: string,
): string {
  const problems = [
    ...notScored.map(({ session, message, location }) =>
      notification(`Session "${session}" is not scored. ${message}`, placeOf(location)),
    ),
    ...reports.flatMap(({ findings }) => findings.filter(({ severity }) => severity === "error").map(unread)),
  ];
  const run = {
    tool: { driver: { name: "drillwright", version, rules: VERDICTS.map(rule) } },
    columnKind: "utf16CodeUnits",
    invocations: [
      {
        executionSuccessful: problems.length === 0,
        toolExecutionNotifications: problems,
      },
    ],
    results: reports.flatMap((report) =>
      report.blocks.flatMap(({ name, criteria }) => criteria.map((goal) => result(goal, name, report))),
    ),
  };
  const log = {
    $schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
    version: "2.1.0",
    runs: [run],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

function notification(text: string, place: object) {
  return { level: "error", message: { text }, locations: [place] };
}

/** Data that could not be read. */
function unread({ message, file, line }: DataFinding) {
  const region = line === null ? {} : { region: { startLine: line } };
  return notification(message, { physicalLocation: { artifactLocation: { uri: uriOf(file) }, ...region } });
}

function rule(verdict: Verdict) {
  return {
    id: verdict,
    shortDescription: { text: MEANINGS[verdict] },
    defaultConfiguration: { level: KINDS[verdict].level },
  };
}

function result(goal: CriterionResult, block: string, report: ScoreReport) {
  const { verdict, evidence, id, text, location } = goal;
  const settles = evidence.settles === null ? "" : ` To settle: ${evidence.settles}.`;
  return {
    ruleId: verdict,
    ruleIndex: VERDICTS.indexOf(verdict),
    ...KINDS[verdict],
    message: {
      text: `${sessionTitle(report)}, ${block}: ${text}: ${inWords(verdict)}. Expected ${evidence.required}; observed ${seen(evidence)}.${settles}`,
    },
    locations: [placeOf(location)],
    relatedLocations: evidence.rows.slice(0, MOST_ROWS).map(rowPlace),
    // The same goal of the same session, wherever its line moves to.
    partialFingerprints: { "goal/v1": `${report.plan.name}/${id}/${report.session.name}` },
  };
}

/** Lines and columns count from 1, and the end is behind the last character. */
function placeOf({ file, range: { start, end } }: Location) {
  return {
    physicalLocation: {
      artifactLocation: { uri: uriOf(file) },
      region: {
        startLine: start.line + 1,
        startColumn: start.character + 1,
        endLine: end.line + 1,
        endColumn: end.character + 1,
      },
    },
  };
}

function rowPlace({ file, line }: Row, index: number) {
  return {
    id: index,
    physicalLocation: { artifactLocation: { uri: uriOf(file) }, region: { startLine: line } },
    message: { text: `line ${line}` },
  };
}

/** A path relative to the working folder as a relative reference (RFC 3986), in which a colon ends no scheme. */
function uriOf(file: string): string {
  return file.split("/").map(encodeURIComponent).join("/");
}
