/** What a unit is worth in SI, and which dimension it belongs to. */
import type { Unit as UnitModel } from "../../shared/plan-model.ts";
import type { Dimension, Metric, Quantity, Unit, UnitName } from "../generated/tree/ast.ts";
import { isShownIn } from "../generated/tree/ast.ts";

/** The unit one, which is not written. */
export const ONE: UnitModel = { symbol: "", factor: 1 };

/** The name of the dimension in which the time of a plan is given. */
export const TIME = "duration";

/** The unit as the model has it, under the name it was written with. A unit stated without a factor is an SI unit. */
export function unitModel(name: UnitName): UnitModel {
  const unit = name.$container;
  const model = { symbol: primarySymbol(unit), factor: factorOf(unit) };
  return unit.zero === undefined ? model : { ...model, offset: unit.zero };
}

/** More units than anybody defines each by another: they go round in a circle. */
const LONGEST_CHAIN = 1000;

/** The unit's worth in the SI unit of its dimension. A unit that ends up defined by itself is worth 1. */
export function factorOf(unit: Unit): number {
  let factor = 1;
  let steps = 0;
  for (let at: Unit | undefined = unit; at?.factor !== undefined; at = at.base?.ref?.$container) {
    if (++steps > LONGEST_CHAIN) return 1;
    factor *= at.factor;
  }
  return factor;
}

/** The name under which amounts in this unit are written out. */
export function primarySymbol(unit: Unit): string {
  return unit.names[0]?.name ?? "";
}

export function dimensionOfUnit(name: UnitName): Dimension {
  return name.$container.$container;
}

/** What an amount is worth in the SI unit of its dimension, on a scale that starts there; one without a unit is a number. */
export function worthOf({ value, unit }: Quantity): number | undefined {
  if (value === undefined || unit?.ref === undefined) return value;
  return value * factorOf(unit.ref.$container);
}

/** The unit an amount is written in; the unit one where none is stated or it is unknown. */
export function unitOfQuantity(quantity: Quantity): UnitModel {
  const unit = quantity.unit?.ref;
  return unit === undefined ? ONE : unitModel(unit);
}

/** An amount in SI, below zero of its scale where that is said; undefined where its number or its unit is not known. */
export function siOf(quantity: Quantity | undefined, isBelowZero = false): number | undefined {
  if (quantity?.value === undefined || quantity.unit?.ref === undefined) return undefined;
  const { factor, offset = 0 } = unitOfQuantity(quantity);
  return (isBelowZero ? -1 : 1) * quantity.value * factor + offset;
}

/** The unit and the step in which a metric is shown; the dimension's first unit in steps of 0.01 where it is not stated. */
export function shownIn(metric: Metric): { unit: UnitModel; step: number } {
  const stated = metric.statements.find(isShownIn);
  if (stated !== undefined) {
    return { unit: stated.unit?.ref ? unitModel(stated.unit.ref) : ONE, step: stated.step || 0.01 };
  }
  const first = metric.dimension?.ref?.units[0]?.names[0];
  return { unit: first === undefined ? ONE : unitModel(first), step: 0.01 };
}

/** The units an amount of this dimension may be written in, one symbol each, in the order they are declared. */
export function unitSymbols(dimension: Dimension): string[] {
  return dimension.units.map(primarySymbol).filter((symbol) => symbol !== "");
}
