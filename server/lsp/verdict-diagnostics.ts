/** The verdicts of a report as diagnostics on the lines that set the goals. */
import {
  type Diagnostic,
  type DiagnosticRelatedInformation,
  DiagnosticSeverity,
} from "vscode-languageserver";
import type { Location } from "../../shared/plan-model.ts";
import type {
  BlockResult,
  ConditionResult,
  CriterionResult,
  ScoreReport,
  Tally,
  Verdict,
} from "../../shared/score-report.ts";
import type { DataFinding, Row } from "../../shared/session-data.ts";
import { inWords, VERDICT_SOURCE } from "../../shared/verdict.ts";
import { blockSummary, goalSummary } from "../report/summary.ts";
import { details, type Lead, leads, lineRange } from "./evidence.ts";
import type { ScoredSession } from "./scorer.ts";

/** `source` of what is wrong with a data file. */
export const DATA_SOURCE = "drillwright data";

/** `code` where nothing says where blocks start, and the numbers of shots do not add up. */
export const STARTS_GUESSED = "starts-guessed";

/** How a verdict is shown; null hides it. */
export type Levels = Readonly<Record<Verdict, DiagnosticSeverity | null>>;

/** Data findings shown for one file; the rest is counted. */
const MOST_FINDINGS = 20;

/** Diagnostics by the URI of the file they stand in. */
export class DiagnosticsByFile extends Map<string, Diagnostic[]> {
  add({ file, range }: Location, diagnostic: Omit<Diagnostic, "range">): void {
    const list = this.get(file) ?? [];
    list.push({ range, ...diagnostic });
    this.set(file, list);
  }

  /** A verdict at the level the settings give it. */
  addVerdict(
    location: Location,
    verdict: Verdict,
    message: string,
    levels: Levels,
    relatedInformation: DiagnosticRelatedInformation[] = [],
  ): void {
    const severity = levels[verdict];
    if (severity === null) return;
    this.add(location, { severity, code: verdict, source: VERDICT_SOURCE, message, relatedInformation });
  }
}

/** The verdicts on the lines of the plan. Cost: linear in the report. */
export function addPlanVerdicts(
  to: DiagnosticsByFile,
  { report, readingsAt }: ScoredSession,
  levels: Levels,
): void {
  const rowsWith = (rows: readonly Row[], metrics: readonly string[]) =>
    related(leads(rows, metrics, readingsAt));
  for (const block of report.blocks) {
    if (block.verdict !== null) {
      const message = `${inWords(block.verdict)} · ${blockSummary(block)}`;
      to.addVerdict(block.location, block.verdict, message, levels);
    }
    for (const target of block.targets) {
      const rows = rowsWith(target.misses, target.metrics);
      to.addVerdict(target.location, targetVerdict(target, block), targetMessage(target), levels, rows);
    }
    for (const criterion of block.criteria) {
      const rows = rowsWith(criterion.evidence.rows, criterion.evidence.metrics);
      to.addVerdict(criterion.location, criterion.verdict, criterionMessage(criterion), levels, rows);
    }
  }
}

/** The session's verdict on its own line, and what is wrong with its data. */
export function addSessionResults(to: DiagnosticsByFile, { report }: ScoredSession, levels: Levels): void {
  const { verdict, session } = report;
  if (verdict !== null) {
    to.addVerdict(session.location, verdict, `${inWords(verdict)}: ${goalSummary(report)}`, levels);
  }
  addFindings(to, report);
  if (report.assignment.suggestedStarts !== undefined) {
    to.add(session.location, {
      severity: DiagnosticSeverity.Information,
      code: STARTS_GUESSED,
      source: DATA_SOURCE,
      message: report.assignment.explanation,
    });
  }
}

/** A target asks nothing by itself: its line tells how many shots met it, at the level of what is known. */
function targetVerdict({ tally }: ConditionResult, block: BlockResult): Verdict {
  if (tally.hits + tally.misses === 0) return "not-measured";
  return tally.unknown > 0 || block.shots.counted < block.shots.asked ? "undecided" : "met";
}

function targetMessage({ tally }: ConditionResult): string {
  if (tally.hits + tally.misses + tally.unknown === 0) return "not measured: no shot of this block was hit.";
  if (tally.hits + tally.misses === 0) return "not measured: no shot has the readings this target needs.";
  return `${tallyText(tally)} met this target.`;
}

function tallyText({ hits, misses, unknown }: Tally): string {
  const known = `${hits} of ${hits + misses + unknown} shots`;
  return unknown === 0 ? known : `${known} (${unknown} unknown)`;
}

function criterionMessage({ verdict, evidence }: CriterionResult): string {
  const outcome = `${inWords(verdict)}: ${evidence.observed} (required: ${evidence.required})`;
  return [outcome, ...details(evidence)].join("\n");
}

function related(leads: readonly Lead[]): DiagnosticRelatedInformation[] {
  return leads.map(({ location: { file, range }, text }) => ({
    location: { uri: file, range },
    message: text,
  }));
}

function addFindings(to: DiagnosticsByFile, report: ScoreReport): void {
  const shown = new Map<string, number>();
  for (const finding of report.findings) {
    const count = (shown.get(finding.file) ?? 0) + 1;
    shown.set(finding.file, count);
    if (count > MOST_FINDINGS) continue;
    to.add(report.session.location, {
      severity: finding.severity === "error" ? DiagnosticSeverity.Error : DiagnosticSeverity.Warning,
      code: finding.code,
      source: DATA_SOURCE,
      message: finding.message,
      relatedInformation: findingPlace(finding),
    });
  }
}

function findingPlace(finding: DataFinding): DiagnosticRelatedInformation[] {
  if (finding.line === null) return [];
  const message =
    finding.column === null ? `line ${finding.line}` : `line ${finding.line}, column ${finding.column}`;
  return [{ location: { uri: finding.file, range: lineRange(finding.line) }, message }];
}
