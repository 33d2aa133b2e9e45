/** What a report is written from. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import type { SessionData } from "../../shared/session-data.ts";

/** A session's verdicts, the shots they were made from, and what was asked of them. */
export interface ReportedSession {
  readonly report: ScoreReport;
  readonly data: SessionData;
  readonly input: ScoringInput;
  /** The metrics that a model had a part in, by name: their numbers are estimates. */
  readonly estimates: ReadonlySet<string>;
}
