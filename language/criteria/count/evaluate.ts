/**
 * `at least 12 of 18 shots on target`: so many of the first shots. It is about the shots hit, and is decided as soon as
 * no shot to come, and none that could not be judged, can change it.
 */
import { metricsOfSubject } from "../condition.ts";
import type { CriterionKind } from "../criterion.ts";
import { judgeCount } from "../hits.ts";
import { predicate, shots } from "../wording.ts";

export const count: CriterionKind<"count"> = {
  sentence: ({ bound, count, outOf, subject }) =>
    `At ${bound} ${count} of the first ${shots(outOf)} ${predicate(subject, count)}.`,
  metrics: ({ subject }) => metricsOfSubject(subject),
  evaluate: (criterion, shots) => judgeCount(criterion, shots),
};
