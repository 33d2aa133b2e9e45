/**
 * `carry loses no more than 4 yd against "Where we are"`: how a number moved from what there was before. About the shots
 * hit the two numbers are compared (`shots-hit.ts`); with a confidence it is about the player's true numbers
 * (`ability.ts`).
 *
 * Only shots that meet all requirements of their block enter, on either side.
 */
import type { ChangeCriterion } from "../../../shared/plan-model.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { shotsToCome } from "../statistic/usable-shots.ts";
import { judgeAbility } from "./ability.ts";
import { beforeOf, openInSides, valueBefore } from "./before.ts";
import { cautionsOn } from "./cautions.ts";
import { withDecisiveExtremes } from "./extremes.ts";
import { measureOf, openInMovement } from "./movement.ts";
import { effectOf, seenOf, sideInWords } from "./seen.ts";
import { judgeShotsHit } from "./shots-hit.ts";
import { type Compared, sideOf } from "./sides.ts";
import { againstInWords, required, scaleOf, sentenceOf } from "./words.ts";

export const change: CriterionKind<"change"> = {
  sentence: sentenceOf,
  metrics: ({ metric }) => [metric],
  evaluate,
};

function evaluate(criterion: ChangeCriterion, shots: CountedShots): Outcome {
  const measure = measureOf(criterion.movement, shots.metric(criterion.metric));
  const now = sideOf(criterion, shots);
  const before = beforeOf(criterion, shots);
  const after = now.value ?? null;
  const against = againstInWords(criterion.against);
  const outcome: Omit<Outcome, "verdict"> = {
    required: required(criterion, measure),
    observed: sideInWords(criterion, now, scaleOf(criterion, measure, shots)),
    brief: "",
    value: null,
    shotsUsed: now.values.length,
    tally: null,
    interval: null,
    settles: null,
    deciding: now.usable.indices,
    cautions: [],
    comparison: { against, before: null, after, smallestShown: null },
  };
  if (typeof before === "string") return { ...outcome, verdict: "not-measured", settles: before };
  return judge(withDecisiveExtremes({ criterion, measure, now, before }), outcome);
}

function judge(compared: Compared, outcome: Omit<Outcome, "verdict">): Outcome {
  const { criterion, now } = compared;
  const seen = { ...outcome, ...seenOf(compared), cautions: cautionsOn(compared) };
  const openSides = openInSides(compared);
  if (openSides !== null) return { ...seen, ...openSides };
  const effect = effectOf(compared);
  const settles =
    openInMovement(criterion, now.shots) ??
    shotsToCome(criterion.confidence, now.shots) ??
    missingNumber(compared);
  if (settles !== null || effect === undefined) {
    return { ...seen, verdict: "undecided", settles: settles ?? NO_SHARE };
  }
  if (criterion.confidence === null) return judgeShotsHit(compared, effect, seen);
  const { smallestShown, ...judged } = judgeAbility(compared, criterion.confidence, effect);
  return {
    ...seen,
    ...judged,
    comparison: { ...seen.comparison, smallestShown },
    cautions: [...seen.cautions, ...judged.cautions],
  };
}

const NO_SHARE = "an amount instead of a share: what it was is not above zero";

/** What a number needs that could not be made of the shots, now or before. */
function missingNumber(compared: Compared): string | null {
  const { criterion, now, before } = compared;
  const place =
    now.value === undefined ? "" : valueBefore(compared) === undefined ? ` in ${before.name}` : null;
  if (place === null) return null;
  return criterion.statistic.kind === "spread"
    ? `a spread needs 2 shots or more${place}`
    : "a share between 0 % and 100 %";
}
