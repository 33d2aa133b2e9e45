/** Amounts, bounds and conditions: from the tree to the model. */
import type {
  Amount,
  Bounds,
  Condition as ConditionModel,
  ShotTest as ShotTestModel,
  Subject as SubjectModel,
  WindowVariant as WindowVariantModel,
} from "../../shared/plan-model.ts";
import type {
  Condition,
  Confidence,
  Count,
  Quantity,
  Range,
  ShotTest,
  Subject,
  Window,
  WindowTest,
  WindowVariant,
} from "../generated/tree/ast.ts";
import { directionModel } from "../types/directions.ts";
import { amountOf, type Bindings, NO_BINDINGS, numberOf } from "../types/parameters.ts";
import { unitOfQuantity } from "../types/units.ts";
import { IncompleteError, resolved } from "./unresolved.ts";

/** @throws IncompleteError where a parameter stands for nothing. */
export function lowerQuantity(quantity: Quantity, bindings: Bindings): Amount {
  const amount = amountOf(quantity, bindings);
  if (amount?.value === undefined) throw unbound(quantity.parameter?.$refText);
  const unit = unitOfQuantity(amount);
  const { direction } = quantity;
  return {
    value: amount.value * unit.factor + (unit.offset ?? 0),
    unit,
    direction: direction === undefined ? null : directionModel(resolved(direction)),
  };
}

/** @throws IncompleteError where a parameter stands for no number. */
export function lowerCount(count: Count, bindings: Bindings): number {
  const number = numberOf(count, bindings);
  if (number === undefined) throw unbound(count.parameter?.$refText);
  return number;
}

function unbound(parameter = ""): IncompleteError {
  return new IncompleteError(`Nothing is known of what ${JSON.stringify(parameter)} stands for.`);
}

export function lowerRange(range: Range, bindings: Bindings): Bounds {
  const lower = (quantity: Quantity) => lowerQuantity(quantity, bindings);
  switch (range.$type) {
    case "Within": {
      const tolerance = lower(range.tolerance);
      const none: Amount = { value: 0, unit: tolerance.unit, direction: null };
      const centre = range.centre ? lower(range.centre) : none;
      return { kind: "within", plusMinus: range.symmetric, tolerance, centre };
    }
    case "Between":
      return { kind: "between", one: lower(range.low), other: lower(range.high) };
    case "AtLeast":
      return { kind: "at least", limit: lower(range.limit) };
    case "AtMost":
      return { kind: "at most", limit: lower(range.limit) };
    case "Below":
      return { kind: "below", limit: lower(range.limit) };
    case "Above":
      return { kind: "above", limit: lower(range.limit) };
  }
}

export function lowerCondition(condition: Condition, bindings: Bindings): ConditionModel {
  return {
    anyOf: condition.alternatives.map(({ tests }) => ({
      allOf: tests.map((test) => lowerTest(test, bindings)),
    })),
  };
}

function lowerTest(test: ShotTest, bindings: Bindings): ShotTestModel {
  switch (test.$type) {
    case "NumberTest":
      return {
        kind: "number",
        metric: resolved(test.metric).name,
        bounds: lowerRange(test.range, bindings),
      };
    case "CategoryTest":
      return {
        kind: "category",
        metric: resolved(test.metric).name,
        categories: test.categories.map((category) => resolved(category).name),
      };
    case "WindowTest":
      return lowerWindowTest(test);
  }
}

/** Windows that lead back to themselves have no meaning. */
const open = new Set<Window>();

/** Every window is written out where it is named, so that a few that name each other twice would become millions. */
export const MOST_WINDOWS = 500;
let writtenOut = 0;

/** @throws IncompleteError where the window is made of itself, or of too many others. */
function lowerWindowTest({ window: reference, inside }: WindowTest): ShotTestModel {
  const window = resolved(reference);
  if (open.has(window))
    throw new IncompleteError(`The window ${JSON.stringify(window.name)} is made of itself.`);
  writtenOut = open.size === 0 ? 1 : writtenOut + 1;
  if (writtenOut > MOST_WINDOWS)
    throw new IncompleteError(`The window ${JSON.stringify(window.name)} is made of too many others.`);
  open.add(window);
  try {
    const variants = window.variants.map(lowerVariant).sort((a, b) => specificity(b) - specificity(a));
    return { kind: "window", window: window.name, inside, variants };
  } finally {
    open.delete(window);
  }
}

function lowerVariant({ clubs, level, condition }: WindowVariant): WindowVariantModel {
  return {
    clubs: clubs.map((club) => resolved(club).name),
    level: level ?? null,
    condition: lowerCondition(condition, NO_BINDINGS),
  };
}

/** A variant for a club comes before one for a level, and both before what holds for all. */
function specificity({ clubs, level }: WindowVariantModel): number {
  return (clubs.length > 0 ? 2 : 0) + (level === null ? 0 : 1);
}

export function lowerSubject(subject: Subject, bindings: Bindings): SubjectModel {
  switch (subject.$type) {
    case "OnTarget":
      return { kind: "on-target" };
    case "Meeting":
      return { kind: "meeting", condition: lowerCondition(subject.condition, bindings) };
    case "InWindow":
      return { kind: "meeting", condition: { anyOf: [{ allOf: [lowerTest(subject.test, bindings)] }] } };
  }
}

/** From 0 to 1; null where the sentence is about the shots hit. */
export function lowerConfidence(confidence: Confidence | undefined): number | null {
  return confidence === undefined ? null : confidence.level / 100;
}
