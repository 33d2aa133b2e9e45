import type { Location } from "../plan-model.ts";
import type { Declared, RequestMessage } from "./message.ts";

/** The blocks of a plan and the goals they set, as the plan stands in the editor. Null where there is no such plan. */
export const planGoals: RequestMessage<PlanGoalsParams, PlanGoals | null> = {
  method: "drillwright/planGoals",
};

export interface PlanGoalsParams {
  readonly plan: Declared;
}

export interface PlanGoals {
  /** Only blocks that set goals. */
  readonly blocks: readonly BlockGoals[];
  /** Why the goals cannot be told, in a sentence; null where they can. */
  readonly problem: string | null;
}

export interface BlockGoals {
  readonly name: string;
  readonly location: Location;
  readonly goals: readonly Goal[];
}

export interface Goal {
  /** Stable within the plan: the block's name, then the goal's place in the block, from 1. */
  readonly id: string;
  /** As the coach wrote it. */
  readonly text: string;
  readonly location: Location;
}
