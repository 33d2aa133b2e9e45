/** One block: how its shots stood to what it asks for, every goal with its evidence, and the patterns of a baseline. */
import type { BlockResult, ConditionResult } from "../../../shared/score-report.ts";
import { placeIn } from "../places.ts";
import type { ReportedSession } from "../reported-session.ts";
import { type Entry, remark, type Section } from "../section.ts";
import { blockSummary } from "../summary.ts";
import { findingEntry } from "./findings.ts";
import { goalEntry } from "./goal.ts";

export function blockSection(
  block: BlockResult,
  { report, input }: ReportedSession,
  mostRows: number,
): Section {
  const context = { planFile: report.plan.location.file, metrics: input.metrics, mostRows };
  return {
    title: `${block.name} (${block.kind})`,
    remark: blockSummary(block),
    mark: block.verdict,
    entries: [
      ...[...block.targets, ...block.requirements].map((condition) =>
        conditionEntry(condition, context.planFile),
      ),
      ...block.criteria.map((criterion) => goalEntry(criterion, context)),
      ...block.findings.map((finding) => findingEntry(finding, context)),
    ],
  };
}

/** A target or a requirement, with how many shots met it. */
function conditionEntry(condition: ConditionResult, planFile: string): Entry {
  return remark(`${condition.text}: ${conditionStanding(condition)}`, placeIn(planFile, condition.location));
}

/** `9 of 12 shots, 1 more could not be judged` */
export function conditionStanding({ tally: { hits, misses, unknown } }: ConditionResult): string {
  const met = hits + misses === 0 ? "no shots to judge" : `${hits} of ${hits + misses} shots`;
  return unknown === 0 ? met : `${met}, ${unknown} more could not be judged`;
}
