/** Amounts, bounds and conditions: from the tree to the model. */
import type {
  Amount,
  Bounds,
  Condition as ConditionModel,
  Subject as SubjectModel,
} from "../../shared/plan-model.ts";
import type { Condition, Quantity, Range, Subject } from "../generated/tree/ast.ts";
import { directionModel } from "../types/directions.ts";
import { unitOfQuantity } from "../types/units.ts";
import { resolved } from "./unresolved.ts";

export function lowerQuantity(quantity: Quantity): Amount {
  const unit = unitOfQuantity(quantity);
  return {
    value: quantity.value * unit.factor,
    unit,
    direction: quantity.direction === undefined ? null : directionModel(resolved(quantity.direction)),
  };
}

export function lowerRange(range: Range): Bounds {
  switch (range.$type) {
    case "Within": {
      const tolerance = lowerQuantity(range.tolerance);
      const none: Amount = { value: 0, unit: tolerance.unit, direction: null };
      const centre = range.centre ? lowerQuantity(range.centre) : none;
      return { kind: "within", plusMinus: range.symmetric, tolerance, centre };
    }
    case "Between":
      return { kind: "between", one: lowerQuantity(range.low), other: lowerQuantity(range.high) };
    case "AtLeast":
      return { kind: "at least", limit: lowerQuantity(range.limit) };
    case "AtMost":
      return { kind: "at most", limit: lowerQuantity(range.limit) };
    case "Below":
      return { kind: "below", limit: lowerQuantity(range.limit) };
    case "Above":
      return { kind: "above", limit: lowerQuantity(range.limit) };
  }
}

export function lowerCondition(condition: Condition): ConditionModel {
  return {
    anyOf: condition.alternatives.map(({ tests }) => ({
      allOf: tests.map(({ metric, range }) => ({ metric: resolved(metric).name, bounds: lowerRange(range) })),
    })),
  };
}

export function lowerSubject(subject: Subject): SubjectModel {
  return subject.$type === "OnTarget"
    ? { kind: "on-target" }
    : { kind: "meeting", condition: lowerCondition(subject.condition) };
}
