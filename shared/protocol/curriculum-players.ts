import type { Standing } from "../curriculum-standing.ts";
import type { Declared, RequestMessage } from "./message.ts";
import type { DeclaredAt } from "./project.ts";

/**
 * Where every player of a curriculum stands at each of its steps: scores the sessions of all its plans. Null where there
 * is no such curriculum.
 */
export const curriculumPlayers: RequestMessage<CurriculumPlayersParams, CurriculumPlayers | null> = {
  method: "drillwright/curriculumPlayers",
};

export interface CurriculumPlayersParams {
  readonly curriculum: Declared;
  /** The day from which reviews are looked at, as `2026-10-12`: where the editor is, not the server. */
  readonly today: string;
}

export interface CurriculumPlayers {
  /** As the curriculum lists them. */
  readonly steps: readonly StepPlayers[];
  /** Why it is not known, and what to do about it, in a sentence; null where it is. */
  readonly problem: string | null;
}

export interface StepPlayers {
  readonly plan: DeclaredAt;
  /** Everybody who practised any plan of the curriculum, by name. */
  readonly players: readonly PlayerAtStep[];
}

export interface PlayerAtStep {
  readonly player: Declared;
  readonly standing: Standing;
  /** The latest session of the plan; null where there is none. */
  readonly session: DeclaredAt | null;
}
