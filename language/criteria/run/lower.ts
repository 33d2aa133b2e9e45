import type { RunCriterion as Model } from "../../../shared/plan-model.ts";
import type { RunCriterion } from "../../generated/tree/ast.ts";
import { lowerCount, lowerSubject } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import type { Common } from "../lower.ts";

export function lowerRun(
  { length, subject }: RunCriterion,
  common: Common,
  { bindings }: CriterionContext,
): Model {
  return {
    kind: "run",
    ...common,
    length: lowerCount(length, bindings),
    subject: lowerSubject(subject, bindings),
  };
}
