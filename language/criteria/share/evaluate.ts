/**
 * `at least 70 % of shots on target`: about the shots hit, a count over all shots of the block; with a confidence,
 * about the share that the player hits in the long run (`ability.ts`).
 *
 * A shot that fails a requirement of the block is one of the shots: "at least" does not count it as a hit, "at most"
 * counts it (`required.ts`).
 */
import type { ShareCriterion } from "../../../shared/plan-model.ts";
import { tally } from "../../../shared/statistics/counting.ts";
import { metricsOfSubject } from "../condition.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { briefHits, judged, observedHits, plannedShots } from "../hits.ts";
import { judgeCount } from "../judge-count.ts";
import { countedTruths, hasRequirements, predicate, qualified } from "../required.ts";
import { percent, roundedPercent } from "../wording.ts";
import { judgeAbility } from "./ability.ts";

/** In shots: 55 % of 20 is 11.000000000000002 in binary, and must ask for 11. */
const SLACK = 1e-9;

export const share: CriterionKind<"share"> = {
  sentence: (criterion, isRequiring) => {
    const share = `at ${criterion.bound} ${percent(criterion.share)}`;
    const are = predicate(criterion, isRequiring, 2);
    return criterion.confidence === null
      ? `Of the block's shots, ${share} ${are}.`
      : `In the long run, ${share} of the player's shots ${are}, shown at ${percent(criterion.confidence)} confidence.`;
  },
  metrics: ({ subject }) => metricsOfSubject(subject),
  evaluate: (criterion, shots) =>
    criterion.confidence === null
      ? judgeShotsHit(criterion, shots)
      : judgeAbility(criterion, criterion.confidence, shots),
};

function judgeShotsHit(criterion: ShareCriterion, shots: CountedShots): Outcome {
  const { bound, share, subject } = criterion;
  const outOf = plannedShots(shots);
  const exact = share * outOf;
  const count = bound === "least" ? Math.ceil(exact - SLACK) : Math.floor(exact + SLACK);
  const phrase = qualified(criterion, hasRequirements(shots));
  const inShots = outOf === 0 ? "" : ` (${count} of ${outOf})`;
  const standing = tally(countedTruths(criterion, shots), outOf);
  const known = judged(standing);
  const observed = standing.hits / known;
  const inPercent = known === 0 ? "" : ` (${roundedPercent(observed, share)})`;
  return judgeCount({ bound, count, outOf, subject }, shots, {
    required: `at ${bound} ${percent(share)} of shots ${phrase}${inShots}`,
    observed: observedHits(standing, phrase, inPercent),
    brief: briefHits(standing, inPercent),
    value: known === 0 ? null : observed,
  });
}
