/** Which block of the plan each shot belongs to. */
import type { ScoringInput } from "../../../shared/plan-model.ts";
import type { Assignment } from "../../../shared/session-data.ts";
import type { Hit } from "../cells/hits.ts";
import { assignByName } from "./assign-by-name.ts";
import { assignByStarts } from "./assign-by-starts.ts";
import { assignInOrder } from "./assign-in-order.ts";
import { Tables } from "./tables.ts";

/** The block of every shot, in the order of the shots; null for a shot that belongs to none. */
export interface Assigned {
  readonly blocks: readonly (string | null)[];
  readonly assignment: Assignment;
}

/**
 * Gives the shots, in the order they were hit, to the blocks of the plan: as the tables name them; where they name
 * none, from the starts that the session states; where it states none, in the order of the plan. `files` are the tables as
 * the shots call them, in the order of the session's `data` lines. Linear, but for sorting pauses.
 */
export function assign(
  hits: readonly Hit[],
  { plan, session }: Pick<ScoringInput, "plan" | "session">,
  files: readonly string[],
): Assigned {
  const tables = new Tables(hits, session, files);
  if (hits.some((hit) => typeof hit.namedBlock === "string")) return assignByName(hits, session);
  if (session.starts.length > 0) return assignByStarts(hits, session.starts, tables);
  return assignInOrder(hits, plan, tables);
}
