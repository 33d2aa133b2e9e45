/** What `drillwright trend --format json` prints: how a player stood in the sessions of a plan, one after the other. */
import * as z from "zod/mini";
import { Location, Unit } from "../../../shared/plan-model.ts";
import { Verdict } from "../../../shared/score-report.ts";
import { meanLimitsTwoSided } from "../../../shared/statistics/student.ts";
import { sampleOf } from "../../../shared/statistics/summary.ts";
import { countedShots, valuesOf } from "../counted.ts";
import type { ReportedSession } from "../reported-session.ts";
import { inOrder } from "./sessions-in-order.ts";

/** The confidence of the intervals: the true average is outside, on either side, with the rest. */
export const CONFIDENCE = 0.9;

export const TrendGoal = z.object({
  id: z.string(),
  block: z.string(),
  text: z.string(),
  location: Location,
  /** One a session; null where the session did not have the goal. `brief` is the observed number, for people. */
  results: z.array(
    z.nullable(z.object({ verdict: Verdict, brief: z.string(), value: z.nullable(z.number()) })),
  ),
});

export const TrendAverage = z.object({
  block: z.string(),
  metric: z.string(),
  /** The unit to show it in; the numbers below are SI, target frame. */
  unit: Unit,
  isEstimate: z.boolean(),
  /** One a session; null where nothing was measured. Limits are null where there are too few shots. */
  points: z.array(
    z.nullable(
      z.object({
        average: z.number(),
        low: z.nullable(z.number()),
        high: z.nullable(z.number()),
        shots: z.number(),
      }),
    ),
  ),
});

export const Trend = z.object({
  format: z.literal("drillwright/trend"),
  version: z.literal(1),
  /** The version of this tool. */
  tool: z.string(),
  plan: z.string(),
  player: z.string(),
  confidence: z.number(),
  /** By date, those without one last. */
  sessions: z.array(
    z.object({
      name: z.string(),
      date: z.nullable(z.string()),
      location: Location,
      verdict: z.nullable(Verdict),
      planSha256: z.nullable(z.string()),
    }),
  ),
  goals: z.array(TrendGoal),
  averages: z.array(TrendAverage),
});
export type Trend = z.infer<typeof Trend>;

/** The sessions are all of one plan and one player, at least one. Linear in shots times metrics asked about. */
export function trendOf(sessions: readonly ReportedSession[], tool: string): Trend {
  const ordered = inOrder(sessions);
  const reports = ordered.map(({ report }) => report);
  return {
    format: "drillwright/trend",
    version: 1,
    tool,
    plan: reports[0]?.plan.name ?? "",
    player: reports[0]?.player.name ?? "",
    confidence: CONFIDENCE,
    sessions: reports.map(({ session, verdict, plan }) => ({ ...session, verdict, planSha256: plan.sha256 })),
    goals: goalsOf(ordered),
    averages: averagesOf(ordered),
  };
}

function goalsOf(sessions: readonly ReportedSession[]): Trend["goals"] {
  const all = sessions.map(({ report }) =>
    report.blocks.flatMap(({ name, criteria }) => criteria.map((goal) => ({ block: name, goal }))),
  );
  const latest = all.at(-1) ?? [];
  return latest.map(({ block, goal: { id, text, location } }) => ({
    id,
    block,
    text,
    location,
    results: all.map((goals) => {
      const found = goals.find((each) => each.goal.id === id && each.goal.text === text)?.goal;
      if (found === undefined) return null;
      return { verdict: found.verdict, brief: found.evidence.brief, value: found.evidence.value };
    }),
  }));
}

/** The metrics that the goals of a block look at, over the shots of the block that count. */
function averagesOf(sessions: readonly ReportedSession[]): Trend["averages"] {
  const counted = sessions.map(countedShots);
  const last = sessions.at(-1);
  if (last === undefined) return [];
  return last.report.blocks.flatMap((block) => {
    const asked = block.criteria.flatMap(({ evidence }) => evidence.metrics);
    return [...new Set(asked)].flatMap((name) => {
      const metric = last.input.metrics.get(name);
      if (metric === undefined || metric.categories.length > 0) return [];
      const points = counted.map((blocks) => pointOf(valuesOf(blocks.get(block.name) ?? [], name)));
      if (points.every((point) => point === null)) return [];
      const isEstimate = sessions.some(({ estimates }) => estimates.has(name));
      return { block: block.name, metric: name, unit: metric.unit, isEstimate, points };
    });
  });
}

function pointOf(values: readonly number[]): Trend["averages"][number]["points"][number] {
  const sample = sampleOf(values);
  if (sample === undefined) return null;
  const limits = meanLimitsTwoSided(sample, CONFIDENCE);
  return { average: sample.mean, low: limits?.low ?? null, high: limits?.high ?? null, shots: sample.n };
}
