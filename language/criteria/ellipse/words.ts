/** Ellipses in words. */
import { intervalOf, unitOf } from "../../../shared/interval.ts";
import type { EllipseCriterion } from "../../../shared/plan-model.ts";
import { writeBounds } from "../../../shared/quantity.ts";
import type { CountedShots } from "../criterion.ts";
import type { Scale } from "../statistic/value.ts";
import { listed, percent } from "../wording.ts";

/** `80 % ellipse of offline and carry` */
function ellipseInWords({ share, metrics }: EllipseCriterion): string {
  return `${percent(share)} ellipse of ${listed(metrics)}`;
}

/** Says which ellipse is meant: the shots' own, or that of the player's true shots. */
export function required(criterion: EllipseCriterion): string {
  const { measure, bounds, confidence } = criterion;
  const claim = `${measure} of the shots' own ${ellipseInWords(criterion)} ${writeBounds(bounds)}`;
  return confidence === null
    ? claim
    : `in the long run, ${measure} of the ${ellipseInWords(criterion)} ${writeBounds(bounds)}, at ${percent(confidence)} confidence`;
}

export function sentenceOf(criterion: EllipseCriterion, isRequiring: boolean): string {
  const { measure, share, metrics, bounds, confidence } = criterion;
  const range = writeBounds(bounds);
  if (confidence === null || measure !== "area") {
    const size = measure === "area" ? measure : `${measure}, from end to end,`;
    const over = isRequiring ? " that are as required" : "";
    return `Over the block's shots${over}, the ${size} of the ${ellipseInWords(criterion)} is ${range}: the ellipse drawn from these shots, which holds ${percent(share)} of many shots that scatter as they do.`;
  }
  const asRequired = isRequiring ? " that are as required" : "";
  return `In the long run, the area of the ellipse that holds ${percent(share)} of the player's shots${asRequired}, by ${listed(metrics)}, is ${range}, shown at ${percent(confidence)} confidence.`;
}

/** An axis is shown as its first metric is; an area to three digits of what it is held against. */
export function scaleOf({ measure, metrics, bounds }: EllipseCriterion, shots: CountedShots): Scale {
  const metric = { ...shots.metric(metrics[0]), directions: [] };
  const unit = unitOf(bounds);
  const { low, high } = intervalOf(bounds, shots.hand);
  const limits = [low, high].filter(Number.isFinite);
  const scale = { metric, unit, hand: shots.hand, limits };
  if (measure !== "area") return scale;
  const digits = (Math.max(...limits) / unit.factor).toExponential().split("e");
  const step = Number(`1e${Number(digits[1] ?? 0) - 2}`);
  return { ...scale, metric: { ...metric, unit, step } };
}
