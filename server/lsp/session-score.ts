/** A scored session as an editor lists it. */
import type { Declared } from "../../shared/protocol/message.ts";
import type { BlockScore, GoalScore, SessionScore } from "../../shared/protocol/session-score.ts";
import type { BlockResult, CriterionResult } from "../../shared/score-report.ts";
import type { ReadingsAt } from "../report/readings.ts";
import { blockSummary, goalSummary } from "../report/summary.ts";
import { details, leads } from "./evidence.ts";
import { type ScoredSession, unreadData } from "./scorer.ts";

/** @param attempt the score, or why there is none. */
export function sessionScoreOf(
  session: Declared,
  plan: Declared | null,
  attempt: ScoredSession | string,
): SessionScore {
  const none = (problem: string): SessionScore => {
    return { session, plan, verdict: null, summary: "", blocks: [], problem };
  };
  if (typeof attempt === "string") return none(attempt);
  const { report, readingsAt } = attempt;
  const unread = unreadData(report);
  if (unread !== undefined) return none(unread);
  return {
    session,
    plan,
    verdict: report.verdict,
    summary: goalSummary(report),
    blocks: report.blocks.map((block) => blockScore(block, readingsAt)),
    problem: null,
  };
}

function blockScore(block: BlockResult, readingsAt: ReadingsAt): BlockScore {
  const { name, location, verdict, criteria } = block;
  const goals = criteria.map((criterion) => goalScore(criterion, readingsAt));
  return { name, location, verdict, summary: blockSummary(block), goals };
}

function goalScore(
  { id, text, location, verdict, evidence }: CriterionResult,
  readingsAt: ReadingsAt,
): GoalScore {
  const { required, observed, rows, metrics } = evidence;
  return {
    id,
    text,
    location,
    verdict,
    required,
    observed,
    details: details(evidence),
    rows: leads(rows, metrics, readingsAt),
  };
}
