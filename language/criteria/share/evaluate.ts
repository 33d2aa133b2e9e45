/**
 * `at least 70 % of shots on target`: about the shots hit, a count over all shots of the block; with a confidence,
 * about the share that the player hits in the long run (`ability.ts`).
 */
import type { ShareCriterion } from "../../../shared/plan-model.ts";
import { tally } from "../../../shared/statistics/counting.ts";
import { metricsOfSubject } from "../condition.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { judgeCount, judged, observedHits, plannedShots } from "../hits.ts";
import { percent, predicate, qualified, roundedPercent } from "../wording.ts";
import { judgeAbility } from "./ability.ts";

/** In shots: 55 % of 20 is 11.000000000000002 in binary, and must ask for 11. */
const SLACK = 1e-9;

export const share: CriterionKind<"share"> = {
  sentence: (criterion) => {
    const share = `at ${criterion.bound} ${percent(criterion.share)}`;
    return criterion.confidence === null
      ? `Of the block's shots, ${share} ${predicate(criterion.subject, 2)}.`
      : `In the long run, ${share} of the player's shots ${predicate(criterion.subject, 2)}, shown at ${percent(criterion.confidence)} confidence.`;
  },
  metrics: ({ subject }) => metricsOfSubject(subject),
  evaluate: (criterion, shots) =>
    criterion.confidence === null
      ? judgeShotsHit(criterion, shots)
      : judgeAbility(criterion, criterion.confidence, shots),
};

function judgeShotsHit({ bound, share, subject }: ShareCriterion, shots: CountedShots): Outcome {
  const outOf = plannedShots(shots);
  const exact = share * outOf;
  const count = bound === "least" ? Math.ceil(exact - SLACK) : Math.floor(exact + SLACK);
  const outcome = judgeCount({ bound, count, outOf, subject }, shots);
  const standing = tally(shots.hits(subject), outOf);
  if (judged(standing) === 0) return outcome;
  const observed = standing.hits / judged(standing);
  return {
    ...outcome,
    required: `at ${bound} ${percent(share)} of shots ${qualified(subject)} (${count} of ${outOf})`,
    observed: observedHits(standing, subject, ` (${roundedPercent(observed)})`),
    value: observed,
  };
}
