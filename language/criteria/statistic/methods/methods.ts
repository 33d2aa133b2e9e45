/** Which method judges which statistic as ability. */
import type { Statistic } from "../../../../shared/plan-model.ts";
import type { Interval } from "../../../../shared/statistics/interval.ts";
import type { ReadingUncertainty } from "../../../../shared/statistics/reading-uncertainty.ts";
import { sampleOf } from "../../../../shared/statistics/summary.ts";
import type { Order } from "../compute.ts";
import { EXACT } from "../uncertainty.ts";
import { averageMethod } from "./average.ts";
import type { Method } from "./method.ts";
import { percentileMethod, spanMethod } from "./order.ts";
import { spreadMethod } from "./spread.ts";

/**
 * Undefined for a statistic that has no reading as ability, and without values.
 *
 * @param write limits in words
 */
export function methodFor(
  statistic: Statistic,
  values: readonly number[],
  uncertainty: ReadingUncertainty | null,
  { sign }: Order,
  write: (limits: Interval) => string,
): Method | undefined {
  const sample = sampleOf(values);
  if (sample === undefined) return undefined;
  switch (statistic.kind) {
    case "average":
      return averageMethod(sample, uncertainty ?? EXACT);
    case "median":
      return percentileMethod(values, 0.5);
    case "spread":
      return spreadMethod(values, uncertainty ?? EXACT, write);
    case "percentile":
      return percentileMethod(values, sign === 1 ? statistic.share : 1 - statistic.share);
    case "span":
      return spanMethod(values, statistic.share);
    case "best":
    case "worst":
      return undefined;
  }
}
