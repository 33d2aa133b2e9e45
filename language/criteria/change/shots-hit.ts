/** A change of the shots hit: the two numbers are compared, as far as their readings are to be trusted. */
import { isInside } from "../../../shared/statistics/interval.ts";
import { uncertaintyOfMean } from "../../../shared/statistics/reading-uncertainty.ts";
import type { Outcome } from "../criterion.ts";
import { withProbability } from "../statistic/probability.ts";
import { valueBefore } from "./before.ts";
import { unsharedVariance } from "./methods/average.ts";
import { claimOfMovement } from "./movement.ts";
import type { Compared } from "./sides.ts";
import { effectWriter } from "./words.ts";

/** @param seen the outcome without its verdict */
export function judgeShotsHit(compared: Compared, effect: number, seen: Omit<Outcome, "verdict">): Outcome {
  const { criterion, measure, now } = compared;
  const claim = claimOfMovement(criterion.movement, measure, now.shots.hand);
  const verdict = isInside(effect, claim.interval, claim.slack) ? "met" : "missed";
  const uncertainty = uncertaintyOfDifference(compared);
  if (criterion.statistic.kind !== "average" || uncertainty === 0) return { ...seen, verdict };
  const was = valueBefore(compared) ?? Number.NaN;
  const doubtful = { value: effect, uncertainty: measure === "share" ? uncertainty / was : uncertainty };
  const writer = effectWriter(criterion, measure, now.shots);
  return withProbability({ ...seen, verdict }, "change", doubtful, claim, now.shots, writer.range);
}

/** Standard uncertainty of the difference of two averages, SI: what the readings of one session share cancels. */
function uncertaintyOfDifference({ now, before }: Compared): number {
  if (before.kind === "usual") return uncertaintyOfMean(now.values.length, now.uncertainty);
  const { side, isSameSession } = before;
  const ownParts = [now, side].map(
    ({ values, uncertainty: { random } }) => (random * random) / values.length,
  );
  const errors = { before: side.uncertainty, now: now.uncertainty, areSame: isSameSession };
  return Math.sqrt(ownParts.reduce((sum, part) => sum + part, unsharedVariance(errors)));
}
