import type { StatisticCriterion as Model, Statistic as StatisticModel } from "../../../shared/plan-model.ts";
import type { Statistic, StatisticCriterion } from "../../generated/tree/ast.ts";
import { lowerConfidence, lowerCount, lowerRange } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import { resolved } from "../../lowering/unresolved.ts";
import type { Bindings } from "../../types/parameters.ts";
import type { Common } from "../lower.ts";

export function lowerStatistic(
  { statistic, metric, range, confidence }: StatisticCriterion,
  common: Common,
  { bindings }: CriterionContext,
): Model {
  return {
    kind: "statistic",
    ...common,
    statistic: lowerStatisticName(statistic, bindings),
    metric: resolved(metric).name,
    bounds: lowerRange(range, bindings),
    confidence: lowerConfidence(confidence),
  };
}

/** Which statistic is meant. */
export function lowerStatisticName(
  statistic: StatisticCriterion["statistic"] | Statistic,
  bindings: Bindings,
): StatisticModel {
  switch (statistic.$type) {
    case "Summary":
      return { kind: statistic.name };
    case "Percentile":
      return { kind: "percentile", share: lowerCount(statistic.share, bindings) / 100 };
    case "Span":
      return { kind: "span", share: lowerCount(statistic.share, bindings) / 100 };
  }
}
