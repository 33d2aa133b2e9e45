/** Shots to blocks where the tables name them. */
import type { Session } from "../../../shared/plan-model.ts";
import type { Hit } from "../cells/hits.ts";
import type { Assigned } from "./assign.ts";

/**
 * Each shot belongs to the block its row names. Where no name stands on more than one row and other rows say nothing,
 * the names are marks: a block goes on until the next one is named.
 */
export function assignByName(hits: readonly Hit[], session: Session): Assigned {
  const marks = areMarks(hits);
  let current: string | null = null;
  const blocks = hits.map(({ namedBlock }) => {
    if (namedBlock !== undefined || !marks) current = namedBlock ?? null;
    return current;
  });
  const how = marks
    ? "The tables name each block on one row only, so a block goes on from there until the next one is named."
    : "The tables name the block of each shot.";
  const unused =
    session.starts.length > 0 ? " The starts that the session states were therefore not needed." : "";
  return { blocks, assignment: { method: "column", explanation: how + unused } };
}

function areMarks(hits: readonly Hit[]): boolean {
  const named = hits.flatMap(({ namedBlock }) => namedBlock ?? []);
  return new Set(named).size === named.length && hits.some(({ namedBlock }) => namedBlock === undefined);
}
