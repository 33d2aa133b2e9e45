/** Which effects meet the movement that a criterion asks for. */
import { signOf } from "../../../shared/interval.ts";
import type { ChangeCriterion, Hand, Metric, Movement } from "../../../shared/plan-model.ts";
import { wordFor, writeAmount } from "../../../shared/quantity.ts";
import { slackOf } from "../../../shared/statistics/interval.ts";
import type { Claim } from "../condition.ts";
import type { CountedShots } from "../criterion.ts";
import { isWidth, titleOf } from "../statistic/names.ts";

/**
 * The size of a change: a `difference` now − before, SI and target frame, or a `share` of what there was before,
 * now/before − 1.
 */
export type Measure = "difference" | "share";

/** An amount in % is a share of what there was, unless readings of the metric are in % themselves. */
export function measureOf({ amount }: Movement, { unit }: Metric): Measure {
  return amount.unit.symbol === "%" && unit.symbol !== "%" ? "share" : "difference";
}

/** The effects that the movement claims, for a player of this hand. */
export function claimOfMovement(movement: Movement, measure: Measure, hand: Hand): Claim {
  const { NEGATIVE_INFINITY, POSITIVE_INFINITY } = Number;
  const { value, unit } = movement.amount;
  const slack = slackOf(measure === "share" ? 1 : unit.factor);
  if (movement.kind === "stays") return { interval: { low: -value, high: value }, slack };
  const sign = signOfMovement(movement, hand);
  const isUpwards = (movement.bound === "least") === (sign === 1);
  return {
    interval: isUpwards
      ? { low: sign * value, high: POSITIVE_INFINITY }
      : { low: NEGATIVE_INFINITY, high: sign * value },
    slack,
  };
}

/** Which way it is to move: +1 up or to the positive side of the frame. */
export function signOfMovement(movement: Exclude<Movement, { kind: "stays" }>, hand: Hand): 1 | -1 {
  if (movement.kind === "rises") return 1;
  return movement.kind === "falls" ? -1 : signOf(movement.amount.direction, hand);
}

/** What the movement leaves open, as what would settle it; null where it can be judged. */
export function openInMovement(
  { statistic, movement, metric: name }: ChangeCriterion,
  { metric: metricCalled, hand }: Pick<CountedShots, "metric" | "hand">,
): string | null {
  const metric = metricCalled(name);
  const { kind, amount } = movement;
  const hasSides = metric.directions.length > 0 && !isWidth(statistic);
  if (hasSides && measureOf(movement, metric) === "share") {
    return `an amount of ${name} instead of a share: it goes two ways from zero`;
  }
  if (kind === "stays") return null;
  if (kind === "moves") {
    return hasSides
      ? null
      : `"rises" or "falls" instead of "moves": the ${titleOf(statistic, name)} has no sides`;
  }
  const word = wordFor(1, metric.directions, hand);
  return hasSides
    ? `which way it is to move, as in "moves at least ${writeAmount(amount)} ${word}": ${name} goes two ways from zero`
    : null;
}
