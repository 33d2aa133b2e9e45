/** A criterion about a statistic in a sentence. */
import type { Amount, Bounds, Statistic, StatisticCriterion } from "../../../shared/plan-model.ts";
import { writeBounds } from "../../../shared/quantity.ts";
import { percent } from "../wording.ts";
import { isExtreme, titleOf } from "./names.ts";
import { directionsIn } from "./value.ts";

export function sentenceOf(criterion: StatisticCriterion, isRequiring: boolean): string {
  const { statistic, metric, bounds, confidence } = criterion;
  const verb = statistic.kind === "span" ? "spans" : "is";
  const explained = explanation(statistic, bounds);
  const remark = explained === "" ? "" : ` (${explained})`;
  const range = writeBounds(bounds);
  if (confidence === null || isExtreme(statistic)) {
    return `Over the block's shots${isRequiring ? " that are as required" : ""}, the ${titleOf(statistic, metric)}${remark} ${verb} ${range}.`;
  }
  const over = isRequiring ? " over shots that are as required" : "";
  return `In the long run, the player's ${titleOf(statistic, metric)}${remark}${over} ${verb} ${range}, shown at ${percent(confidence)} confidence.`;
}

/** What is meant by the statistic; empty where its name says it. */
export function explanation(statistic: Statistic, bounds: Bounds): string {
  switch (statistic.kind) {
    case "spread":
      return "standard deviation";
    case "percentile":
      return `${percent(statistic.share)} of the shots ${before(bounds)}`;
    case "span":
      return `without the ${percent((1 - statistic.share) / 2)} at either end`;
    case "best":
      return isAboutSides(bounds) ? "the shot nearest to zero" : "the largest value";
    case "worst":
      return isAboutSides(bounds) ? "the shot farthest from zero" : "the smallest value";
    default:
      return "";
  }
}

/** How shots stand to a percentile: `are below it`, of a metric with sides `are farther out-to-in`. */
function before(bounds: Bounds): string {
  const [direction] = directionsIn(bounds);
  if (direction === undefined) return isAboutSides(bounds) ? "come before it" : "are below it";
  return direction.sign === 1 ? `are not as far ${direction.word}` : `are farther ${direction.word}`;
}

/** Bounds of a metric with sides say which, or lie about zero. */
function isAboutSides(bounds: Bounds): boolean {
  if (bounds.kind === "within") return bounds.centre.direction !== null || isZero(bounds.centre);
  return directionsIn(bounds).length > 0;
}

function isZero({ value }: Amount): boolean {
  return value === 0;
}
