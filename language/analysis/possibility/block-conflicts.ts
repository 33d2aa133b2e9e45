/** The conflicts among the targets, requirements and left-out shots of a block. */
import { once } from "../../../shared/once.ts";
import type { BlockInPlan } from "../subject.ts";
import { type Circumstances, circumstancesOf } from "./circumstances.ts";
import { type Conflict, findConflict } from "./conflict.ts";
import { type Demand, demandsOf, proposeDemand } from "./demand.ts";
import type { Vocabulary } from "./vocabulary.ts";
import { namesImpossibleWindow } from "./window-conflicts.ts";

export interface BlockConflict extends Conflict<Demand> {
  /** The line that it is reported at. */
  readonly culprit: Demand;
  /** All circumstances that were looked at. */
  readonly among: readonly Circumstances[];
  /** Whether it concerns players of either hand and of every level. With one of the block's clubs is enough. */
  readonly concernsAll: boolean;
}

/** More conflicts of one block than anybody reads at once. */
const MOST_CONFLICTS = 8;

/**
 * Each conflict by itself: the line it is reported at is taken out before the next is looked for. Where there is none, the
 * cost is one question for each of the circumstances.
 */
export const conflictsIn = once((subject: BlockInPlan): readonly BlockConflict[] => {
  const { block, vocabulary, isOwn } = subject;
  const conflicts: BlockConflict[] = [];
  let demands = demandsOf(subject);
  const conditions = demands.map(({ condition }) => condition);
  const circumstances = circumstancesOf(conditions, block.shots);
  while (conflicts.length < MOST_CONFLICTS) {
    const conflict = findConflict(
      demands,
      (demand) => (at) => proposeDemand(demand, at, subject),
      circumstances,
      vocabulary,
    );
    const last = conflict?.demands.at(-1);
    if (conflict === undefined || last === undefined) break;
    if (isSaidOfWindow(conflict.demands, vocabulary)) {
      demands = demands.filter((demand) => demand !== last);
      continue;
    }
    const leaveOut = conflict.demands.findLast(
      ({ role, location }) => role === "leave out" && isOwn(location),
    );
    const culprit = leaveOut ?? last;
    const concernsAll = circumstances.some(({ club }) =>
      circumstances.every((at) => at.club !== club || conflict.circumstances.includes(at)),
    );
    conflicts.push({ ...conflict, culprit, among: circumstances, concernsAll });
    demands = demands.filter((demand) => demand !== culprit);
  }
  return conflicts;
});

/** A single line that fails because of a window that no shot can be inside: that is said of the window. */
function isSaidOfWindow([only, ...others]: readonly Demand[], vocabulary: Vocabulary): boolean {
  return only !== undefined && others.length === 0 && namesImpossibleWindow(only.condition, vocabulary);
}
