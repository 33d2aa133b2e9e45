import type {
  Against as AgainstModel,
  ChangeCriterion as Model,
  Movement as MovementModel,
} from "../../../shared/plan-model.ts";
import type { Against, ChangeCriterion, Movement } from "../../generated/tree/ast.ts";
import { lowerConfidence, lowerQuantity } from "../../lowering/amounts.ts";
import type { CriterionContext } from "../../lowering/context.ts";
import { IncompleteError, resolved } from "../../lowering/unresolved.ts";
import type { Bindings } from "../../types/parameters.ts";
import type { Common } from "../lower.ts";
import { lowerStatisticName } from "../statistic/lower.ts";

export function lowerChange(
  { statistic, metric, movement, against, confidence }: ChangeCriterion,
  common: Common,
  context: CriterionContext,
): Model {
  const { bindings } = context;
  return {
    kind: "change",
    ...common,
    statistic: statistic === undefined ? { kind: "average" } : lowerStatisticName(statistic, bindings),
    metric: resolved(metric).name,
    movement: lowerMovement(movement, bindings),
    against: lowerAgainst(against, context),
    confidence: lowerConfidence(confidence),
  };
}

const KINDS = { Gain: "rises", Fall: "falls", Move: "moves" } as const;

function lowerMovement(movement: Movement, bindings: Bindings): MovementModel {
  const amount = lowerQuantity(movement.amount, bindings);
  if (movement.$type === "Stay") return { kind: "stays", amount };
  // "gains 5 yd" asks for no less.
  const bound = movement.noMore ? "most" : (movement.bound ?? "least");
  return { kind: KINDS[movement.$type], bound, amount };
}

function lowerAgainst(against: Against, { baseline }: CriterionContext): AgainstModel {
  switch (against.$type) {
    case "AgainstBaseline":
      if (baseline === undefined) throw new IncompleteError("The plan has no baseline before this block.");
      return baseline;
    case "AgainstBlock":
      return { kind: "block", block: resolved(against.block).name };
    case "AgainstLastSession":
      return { kind: "last session" };
    case "AgainstSession":
      return { kind: "session", session: resolved(against.session).name };
    case "AgainstUsual":
      return { kind: "usual" };
  }
}
