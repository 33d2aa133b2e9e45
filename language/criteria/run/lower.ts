import type { RunCriterion as Model } from "../../../shared/plan-model.ts";
import type { RunCriterion } from "../../generated/tree/ast.ts";
import { lowerSubject } from "../../lowering/amounts.ts";
import type { Common } from "../lower.ts";

export function lowerRun(criterion: RunCriterion, common: Common): Model {
  return {
    kind: "run",
    ...common,
    length: criterion.length,
    subject: lowerSubject(criterion.subject),
  };
}
