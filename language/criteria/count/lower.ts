import type { CountCriterion as Model } from "../../../shared/plan-model.ts";
import type { CountCriterion } from "../../generated/tree/ast.ts";
import { lowerSubject } from "../../lowering/amounts.ts";
import type { Common } from "../lower.ts";

export function lowerCount(criterion: CountCriterion, common: Common, shots: number): Model {
  return {
    kind: "count",
    ...common,
    bound: criterion.bound,
    count: criterion.count,
    outOf: criterion.outOf ?? shots,
    subject: lowerSubject(criterion.subject),
  };
}
