import type { LoadCriterion as Model } from "../../../shared/plan-model.ts";
import type { LoadCriterion } from "../../generated/tree/ast.ts";
import { lowerCount } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import type { Common } from "../lower.ts";

export function lowerLoad(
  { bound, count, fullEffort, session }: LoadCriterion,
  common: Common,
  { bindings }: CriterionContext,
): Model {
  return {
    kind: "load",
    ...common,
    bound,
    count: lowerCount(count, bindings),
    fullEffort,
    over: session ? "session" : "block",
  };
}
