/** A statistic as ability: the player's true number, judged by confidence limits at the planned number of shots. */
import type { StatisticCriterion } from "../../../shared/plan-model.ts";
import type { ReadingUncertainty } from "../../../shared/statistics/reading-uncertainty.ts";
import { claimOf } from "../condition.ts";
import type { CountedShots } from "../criterion.ts";
import { impossibleConfidence } from "../wording.ts";
import { orderOf } from "./compute.ts";
import { type AbilityOutcome, judgeByMethod, undecided } from "./methods/judge.ts";
import { methodFor } from "./methods/methods.ts";
import { nameOf } from "./names.ts";
import { directionsIn, rangeInWords, scaleOf } from "./value.ts";

/** Judges the true number from the known values. To be asked when all planned shots are hit. */
export function judgeAbility(
  criterion: StatisticCriterion,
  confidence: number,
  values: readonly number[],
  uncertainty: ReadingUncertainty | null,
  shots: CountedShots,
): AbilityOutcome {
  const impossible = impossibleConfidence(confidence);
  if (impossible !== null) return undecided(impossible);
  const { statistic, metric, bounds } = criterion;
  const scale = scaleOf(criterion, shots);
  const write = ({ low, high }: { low: number; high: number }) => rangeInWords(low, high, scale);
  const order = orderOf(shots.metric(metric), shots.hand, directionsIn(bounds));
  const method = methodFor(statistic, values, uncertainty, order, write);
  if (method === undefined) return undecided(noReadingAsAbility(`${nameOf(statistic)} shot`));
  const { interval: claim, slack } = claimOf(bounds, shots.hand);
  return judgeByMethod(method, { claim, confidence, slack }, values.length, write);
}

/** What settles a sentence that has a confidence although no method judges what it says. */
export function noReadingAsAbility(what: string): string {
  return `a sentence without the confidence: the ${what} is judged on the shots hit only`;
}
