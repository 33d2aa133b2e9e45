import type { CountCriterion as Model } from "../../../shared/plan-model.ts";
import type { CountCriterion } from "../../generated/tree/ast.ts";
import { lowerCount, lowerSubject } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import type { Common } from "../lower.ts";

export function lowerCountCriterion(
  { bound, count, outOf, subject }: CountCriterion,
  common: Common,
  { bindings, counted }: CriterionContext,
): Model {
  return {
    kind: "count",
    ...common,
    bound,
    count: lowerCount(count, bindings),
    outOf: outOf === undefined ? counted : lowerCount(outOf, bindings),
    subject: lowerSubject(subject, bindings),
  };
}
