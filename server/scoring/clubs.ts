/** The clubs that shots were hit with. */
import type { Block, Plan } from "../../shared/plan-model.ts";
import type { SessionData, Shot } from "../../shared/session-data.ts";

/** The clubs of a block: those of its shots; where no table tells them, those that the plan states. Each once. */
export function clubsOf(block: Block, shots: readonly Shot[]): readonly string[] {
  const hit = shots.map(({ club }) => club).filter((club) => club !== null);
  return hit.length > 0 ? [...new Set(hit)] : plannedClubs(block);
}

/**
 * The session with the clubs that the plan states, where no table tells any: a shot of a block that is hit with one club
 * was hit with it. Unchanged where a table tells the club of a single shot: the others are then unknown.
 */
export function withPlannedClubs(plan: Plan, data: SessionData): SessionData {
  if (data.shots.some(({ club }) => club !== null)) return data;
  const clubs = new Map(
    plan.blocks.flatMap((block): [string, string][] => {
      const [club, another] = plannedClubs(block);
      return club === undefined || another !== undefined ? [] : [[block.name, club]];
    }),
  );
  if (clubs.size === 0) return data;
  return {
    ...data,
    shots: data.shots.map((shot) => ({ ...shot, club: clubs.get(shot.block ?? "") ?? null })),
  };
}

function plannedClubs({ shots }: Block): readonly string[] {
  return [...new Set(shots.map(({ club }) => club).filter((club) => club !== null))];
}
