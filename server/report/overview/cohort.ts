/** What `drillwright cohort --format json` prints: where every player of a plan stands, by the latest session of each. */
import * as z from "zod/mini";
import { Location } from "../../../shared/plan-model.ts";
import { Tally, Verdict } from "../../../shared/score-report.ts";
import type { ReportedSession } from "../reported-session.ts";
import { inOrder } from "./sessions-in-order.ts";

export const CohortPlayer = z.object({
  name: z.string(),
  /** How many sessions of the plan there are of the player. */
  sessions: z.number(),
  latest: z.object({ name: z.string(), date: z.nullable(z.string()), location: Location }),
  verdict: z.nullable(Verdict),
  /** In the order of `goals`; null where the session did not have the goal. */
  results: z.array(
    z.nullable(z.object({ verdict: Verdict, brief: z.string(), value: z.nullable(z.number()) })),
  ),
});

export const Cohort = z.object({
  format: z.literal("drillwright/cohort"),
  version: z.literal(1),
  /** The version of this tool. */
  tool: z.string(),
  plan: z.string(),
  /** `standing` tells of how many players the goal is met, missed, or open or not measured. */
  goals: z.array(z.object({ id: z.string(), block: z.string(), text: z.string(), standing: Tally })),
  /** In the order of their names: a rank would say more than single sessions can. */
  players: z.array(CohortPlayer),
});
export type Cohort = z.infer<typeof Cohort>;

/** The sessions are all of one plan. Linear in sessions times goals. */
export function cohortOf(sessions: readonly ReportedSession[], tool: string): Cohort {
  const byPlayer = Map.groupBy(inOrder(sessions), ({ report }) => report.player.name);
  const latestOf = [...byPlayer]
    .map(([name, own]) => ({ name, own, latest: latest(own) }))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
  const goals = goalsOf(latestOf.flatMap((player) => player.latest ?? []));
  const players = latestOf.flatMap(({ name, own, latest: session }) =>
    session === undefined ? [] : [standing(name, own.length, session, goals)],
  );
  return {
    format: "drillwright/cohort",
    version: 1,
    tool,
    plan: sessions[0]?.report.plan.name ?? "",
    goals: goals.map((goal, place) => ({
      ...goal,
      standing: tallyOf(players.map((player) => player.results[place]?.verdict)),
    })),
    players,
  };
}

/** The last with a date; where none has one, the last. */
function latest(sessions: readonly ReportedSession[]): ReportedSession | undefined {
  return sessions.findLast(({ report }) => report.session.date !== null) ?? sessions.at(-1);
}

type Goal = Pick<Cohort["goals"][number], "id" | "block" | "text">;

/** Each once, in the order of the plan. */
function goalsOf(sessions: readonly ReportedSession[]): Goal[] {
  const goals = new Map<string, Goal>();
  for (const { report } of sessions) {
    for (const { name, criteria } of report.blocks) {
      for (const { id, text } of criteria) goals.set(`${id} ${text}`, { id, block: name, text });
    }
  }
  return [...goals.values()];
}

function standing(
  name: string,
  sessions: number,
  { report }: ReportedSession,
  goals: readonly Goal[],
): Cohort["players"][number] {
  const own = report.blocks.flatMap(({ criteria }) => criteria);
  return {
    name,
    sessions,
    latest: report.session,
    verdict: report.verdict,
    results: goals.map(({ id, text }) => {
      const found = own.find((goal) => goal.id === id && goal.text === text);
      if (found === undefined) return null;
      return { verdict: found.verdict, brief: found.evidence.brief, value: found.evidence.value };
    }),
  };
}

function tallyOf(verdicts: readonly (Verdict | undefined)[]): Tally {
  const count = (wanted: Verdict) => verdicts.filter((verdict) => verdict === wanted).length;
  const [hits, misses] = [count("met"), count("missed")];
  return { hits, misses, unknown: verdicts.length - hits - misses };
}
