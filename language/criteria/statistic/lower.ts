import type { StatisticCriterion as Model } from "../../../shared/plan-model.ts";
import type { StatisticCriterion } from "../../generated/tree/ast.ts";
import { lowerRange } from "../../lowering/amounts.ts";
import { resolved } from "../../lowering/unresolved.ts";
import type { Common } from "../lower.ts";

export function lowerStatistic(criterion: StatisticCriterion, common: Common): Model {
  return {
    kind: "statistic",
    ...common,
    statistic: criterion.statistic,
    metric: resolved(criterion.metric).name,
    bounds: lowerRange(criterion.range),
    confidence: criterion.confidence === undefined ? null : criterion.confidence.level / 100,
  };
}
