/** What moved with every change that was tried: each measured metric in the baseline and after it. */
import type { Block, Metric } from "../../shared/plan-model.ts";
import type { CriterionResult } from "../../shared/score-report.ts";
import type { Shot } from "../../shared/session-data.ts";
import type { Interval } from "../../shared/statistics/interval.ts";
import { type Sample, sampleOf } from "../../shared/statistics/summary.ts";
import { meanChangeLimits } from "../../shared/statistics/welch.ts";
import { countedShots, valuesOf } from "./counted.ts";
import type { ReportedSession } from "./reported-session.ts";

/** The confidence of the intervals: each limit is wrong with half of the rest. */
export const CONFIDENCE = 0.9;

/** The average of one metric before and after. */
export interface Move {
  readonly metric: Metric;
  readonly before: Sample;
  readonly after: Sample;
  /** What is likely of the true difference, after minus before; null where shots are too few. */
  readonly limits: Interval | null;
  /** False where no goal asked about it: then it is exploration. */
  readonly isAsked: boolean;
  readonly isEstimate: boolean;
}

/** What was changed in a block, and what moved. No moves where there is nothing to compare with. */
export interface ChangeTried {
  readonly block: string;
  readonly change: string;
  readonly baseline: string | null;
  readonly moves: readonly Move[];
}

/** One for every block in which something was changed. Linear in shots times metrics. */
export function changesTried(session: ReportedSession): ChangeTried[] {
  const { blocks } = session.input.plan;
  const counted = countedShots(session);
  return blocks
    .map((block, place) => ({ block, baseline: baselineBefore(blocks.slice(0, place)) }))
    .filter(({ block }) => block.changes.length > 0 && (counted.get(block.name) ?? []).length > 0)
    .map(({ block, baseline }) => {
      const before = baseline === undefined ? [] : (counted.get(baseline.name) ?? []);
      return {
        block: block.name,
        change: block.changes.map(({ kind, text }) => `${kind}: ${text}`).join("; "),
        baseline: baseline?.name ?? null,
        moves: movesBetween(before, counted.get(block.name) ?? [], block.name, session),
      };
    });
}

function baselineBefore(blocks: readonly Block[]): Block | undefined {
  return blocks.findLast(({ kind }) => kind === "baseline");
}

function movesBetween(
  baseline: readonly Shot[],
  changed: readonly Shot[],
  block: string,
  session: ReportedSession,
): Move[] {
  const [before, after] = withSameClubs(baseline, changed);
  const asked = metricsAskedAbout(block, session);
  return (
    [...session.input.metrics.values()]
      // A metric that is another one under a second name moved as that one did.
      .filter(({ name, categories, formula }) => {
        return categories.length === 0 && name !== "effort" && formula?.kind !== "metric";
      })
      .flatMap((metric) => {
        const [was, is] = [before, after].map((shots) => sampleOf(valuesOf(shots, metric.name)));
        if (was === undefined || is === undefined) return [];
        return {
          metric,
          before: was,
          after: is,
          limits: meanChangeLimits(was, is, (1 + CONFIDENCE) / 2) ?? null,
          isAsked: asked.has(metric.name),
          isEstimate: session.estimates.has(metric.name),
        };
      })
      .sort((one, other) => Number(other.isAsked) - Number(one.isAsked))
  );
}

/** Shots with clubs that both have, so that no club is compared with another. */
function withSameClubs(before: readonly Shot[], after: readonly Shot[]): [readonly Shot[], readonly Shot[]] {
  const clubsOf = (shots: readonly Shot[]) => new Set(shots.map(({ club }) => club));
  const [one, other] = [clubsOf(before), clubsOf(after)];
  const both = ({ club }: Shot) => one.has(club) && other.has(club);
  return [before.filter(both), after.filter(both)];
}

/** The metrics of the block's own goals, and of every goal that is about a change. */
function metricsAskedAbout(name: string, { report }: ReportedSession): ReadonlySet<string> {
  const within = (goals: readonly CriterionResult[], isOwn: boolean): string[] =>
    goals.flatMap(({ kind, evidence, parts }) => [
      ...(isOwn || kind === "change" ? evidence.metrics : []),
      ...within(parts, isOwn),
    ]);
  return new Set(report.blocks.flatMap((block) => within(block.criteria, block.name === name)));
}
