import type { GroupCriterion as Model } from "../../../shared/plan-model.ts";
import type { GroupCriterion } from "../../generated/tree/ast.ts";
import { lowerCount } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import { type Common, lowerCriterion } from "../lower.ts";

export function lowerGroup(
  { all, any, needed, criteria }: GroupCriterion,
  common: Common,
  context: CriterionContext,
): Model {
  return {
    kind: "group",
    ...common,
    needed: all ? "all" : any || needed === undefined ? "any" : lowerCount(needed, context.bindings),
    criteria: criteria.map((part, index) => lowerCriterion(part, `${common.id}.${index + 1}`, context)),
  };
}
