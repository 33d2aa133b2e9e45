/** The shots of a session that counted, by block, as its report says. */
import type { Criterion } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";
import type { ReportedSession } from "./reported-session.ts";

/** In the order they were hit. A block without shots has none here. Linear in the shots. */
export function countedShots({ report, data }: ReportedSession): ReadonlyMap<string, readonly Shot[]> {
  const aside = new Set(report.setAside.map(({ row }) => `${row.line} ${row.file}`));
  const counted = new Map<string, Shot[]>();
  for (const shot of data.shots) {
    if (shot.block === null || aside.has(`${shot.row.line} ${shot.row.file}`)) continue;
    const ofBlock = counted.get(shot.block) ?? [];
    ofBlock.push(shot);
    counted.set(shot.block, ofBlock);
  }
  return counted;
}

/** Every goal of the plan as it was asked, the parts of groups included, by the id of its result. */
export function goalsById({ input }: ReportedSession): ReadonlyMap<string, Criterion> {
  const within = (goal: Criterion): [string, Criterion][] => [
    [goal.id, goal],
    ...(goal.kind === "group" ? goal.criteria.flatMap(within) : []),
  ];
  return new Map(input.plan.blocks.flatMap(({ success }) => success.flatMap(within)));
}

/** The readings of a metric, those that there are. */
export function valuesOf(shots: readonly Shot[], metric: string): number[] {
  return shots.flatMap(({ values }) => values[metric] ?? []);
}
