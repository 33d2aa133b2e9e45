/**
 * `at least 12 of 18 shots on target`: so many of the first shots. It is about the shots hit, and is decided as soon as
 * no shot to come, and none that could not be judged, can change it.
 *
 * A shot that fails a requirement of the block uses up its place: "at least" does not count it, "at most" does
 * (`required.ts`).
 */
import { metricsOfSubject } from "../condition.ts";
import type { CriterionKind } from "../criterion.ts";
import { plannedShots } from "../hits.ts";
import { judgeCount } from "../judge-count.ts";
import { predicate } from "../required.ts";

export const count: CriterionKind<"count"> = {
  sentence: (criterion, isRequiring) => {
    const { bound, count, outOf } = criterion;
    const first = outOf === null ? "all shots" : outOf === 1 ? "1 shot" : `the first ${outOf} shots`;
    return `At ${bound} ${count} of ${first} ${predicate(criterion, isRequiring, count)}.`;
  },
  metrics: ({ subject }) => metricsOfSubject(subject),
  // A finding counts over all shots there are.
  evaluate: (criterion, shots) =>
    judgeCount({ ...criterion, outOf: criterion.outOf ?? plannedShots(shots) }, shots),
};
