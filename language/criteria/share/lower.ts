import type { ShareCriterion as Model } from "../../../shared/plan-model.ts";
import type { ShareCriterion } from "../../generated/tree/ast.ts";
import { lowerConfidence, lowerCount, lowerSubject } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import type { Common } from "../lower.ts";

export function lowerShare(
  { bound, share, subject, confidence }: ShareCriterion,
  common: Common,
  { bindings }: CriterionContext,
): Model {
  return {
    kind: "share",
    ...common,
    bound,
    share: lowerCount(share, bindings) / 100,
    subject: lowerSubject(subject, bindings),
    confidence: lowerConfidence(confidence),
  };
}
