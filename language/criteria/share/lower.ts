import type { ShareCriterion as Model } from "../../../shared/plan-model.ts";
import type { ShareCriterion } from "../../generated/tree/ast.ts";
import { lowerSubject } from "../../lowering/amounts.ts";
import type { Common } from "../lower.ts";

export function lowerShare(criterion: ShareCriterion, common: Common): Model {
  return {
    kind: "share",
    ...common,
    bound: criterion.bound,
    share: criterion.share / 100,
    subject: lowerSubject(criterion.subject),
    confidence: criterion.confidence === undefined ? null : criterion.confidence.level / 100,
  };
}
