/** Which block of the plan each shot belongs to. */
import type { Plan, Session } from "../../../shared/plan-model.ts";
import type { Assignment } from "../../../shared/session-data.ts";
import type { Hit } from "../cells/hits.ts";
import { assignByName } from "./assign-by-name.ts";
import { assignByStarts } from "./assign-by-starts.ts";
import { assignInOrder } from "./assign-in-order.ts";

/** The block of every shot, in the order of the shots; null for a shot that belongs to none. */
export interface Assigned {
  readonly blocks: readonly (string | null)[];
  readonly assignment: Assignment;
}

/**
 * Gives the shots, in the order they were hit, to the blocks of the plan: as the tables name them; where they name
 * none, from the starts that the session states; where it states none, in the order of the plan. Linear.
 */
export function assign(hits: readonly Hit[], plan: Plan, session: Session): Assigned {
  if (hits.some((hit) => typeof hit.namedBlock === "string")) return assignByName(hits, session);
  if (session.starts.length > 0) return assignByStarts(hits, session.starts);
  return assignInOrder(hits, plan);
}
