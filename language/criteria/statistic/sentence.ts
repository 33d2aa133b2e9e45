/** A criterion about a statistic in a sentence. */
import type { Bounds, Direction, Statistic, StatisticCriterion } from "../../../shared/plan-model.ts";
import { writeBounds } from "../../../shared/quantity.ts";
import { percent } from "../wording.ts";
import { isExtreme, titleOf } from "./names.ts";
import { directionsIn } from "./value.ts";

export function sentenceOf(criterion: StatisticCriterion, isRequiring: boolean): string {
  const { statistic, metric, bounds, confidence } = criterion;
  const verb = statistic.kind === "span" ? "spans" : "is";
  const remark = explanation(statistic, directionsIn(bounds), hasSides(bounds));
  const range = writeBounds(bounds);
  if (confidence === null || isExtreme(statistic)) {
    return `Over the block's shots${isRequiring ? " that are as required" : ""}, the ${titleOf(statistic, metric)}${remark} ${verb} ${range}.`;
  }
  const over = isRequiring ? " over shots that are as required" : "";
  return `In the long run, the player's ${titleOf(statistic, metric)}${remark}${over} ${verb} ${range}, shown at ${percent(confidence)} confidence.`;
}

/**
 * What is meant by the statistic, in brackets behind its name; empty where the name says it.
 *
 * @param written the direction words of the criterion
 * @param hasSides whether its metric has sides, as far as the criterion shows that
 */
export function explanation(
  statistic: Statistic,
  written: readonly Direction[],
  hasSides: boolean | undefined,
): string {
  switch (statistic.kind) {
    case "spread":
      return " (standard deviation)";
    case "percentile":
      return ` (${percent(statistic.share)} of the shots ${before(written, hasSides)})`;
    case "span":
      return ` (without the ${percent((1 - statistic.share) / 2)} at either end)`;
    case "best":
      return ` (${meant("the largest value", "the shot nearest to zero", hasSides)})`;
    case "worst":
      return ` (${meant("the smallest value", "the shot farthest from zero", hasSides)})`;
    default:
      return "";
  }
}

/** How shots stand to a percentile: `are below it`, of a metric with sides `are farther out-to-in`. */
function before([direction]: readonly Direction[], hasSides: boolean | undefined): string {
  if (direction === undefined) return hasSides === false ? "are below it" : "come before it";
  return direction.sign === 1 ? `are not as far ${direction.word}` : `are farther ${direction.word}`;
}

function meant(without: string, withSides: string, hasSides: boolean | undefined): string {
  if (hasSides === undefined) return `${without}, or where there are sides ${withSides}`;
  return hasSides ? withSides : without;
}

/** Bounds of a metric with sides say which, or lie about zero. */
function hasSides(bounds: Bounds): boolean {
  if (bounds.kind === "within") return bounds.centre.direction !== null || bounds.centre.value === 0;
  return directionsIn(bounds).length > 0;
}
