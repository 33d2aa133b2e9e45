import type { EllipseCriterion as Model } from "../../../shared/plan-model.ts";
import type { EllipseCriterion } from "../../generated/tree/ast.ts";
import { lowerConfidence, lowerCount, lowerRange } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import { resolved } from "../../lowering/unresolved.ts";
import type { Common } from "../lower.ts";

export function lowerEllipse(
  { measure, share, first, second, range, confidence }: EllipseCriterion,
  common: Common,
  { bindings }: CriterionContext,
): Model {
  return {
    kind: "ellipse",
    ...common,
    measure: measure === "area" ? measure : `${measure} axis`,
    share: lowerCount(share, bindings) / 100,
    metrics: [resolved(first).name, resolved(second).name],
    bounds: lowerRange(range, bindings),
    confidence: lowerConfidence(confidence),
  };
}
