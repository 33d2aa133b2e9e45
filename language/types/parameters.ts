/** What the parameters of a drill stand for. */
import { type AstNode, AstUtils, type CstNode, GrammarUtils } from "langium";
import {
  type ArgumentValue,
  type Block,
  type Count,
  type Drill,
  type DrillUse,
  isAmountValue,
  isArgument,
  isBlock,
  isDrill,
  isDrillUse,
  isParameter,
  type Parameter,
  type Quantity,
} from "../generated/tree/ast.ts";

/** What each parameter stands for at one place where a drill is used. */
export type Bindings = ReadonlyMap<Parameter, ArgumentValue>;

/** Outside drills, and in a drill by itself, where every parameter stands for its default. */
export const NO_BINDINGS: Bindings = new Map();

/** What a parameter stands for: its argument, else its default; undefined where it has neither. */
export function argumentOf(parameter: Parameter | undefined, bindings: Bindings): ArgumentValue | undefined {
  return parameter === undefined ? undefined : (bindings.get(parameter) ?? parameter.value);
}

/** The same in a block; a drill by itself has its defaults alone. */
export function bindingsOf(block: Block | Drill): Bindings {
  return isBlock(block) ? bindingsIn(block.use) : NO_BINDINGS;
}

/** What the parameters of a drill stand for where it is used; the defaults are found by `argumentOf`. */
export function bindingsIn(use: DrillUse | undefined): Bindings {
  if (use === undefined) return NO_BINDINGS;
  const bindings = new Map<Parameter, ArgumentValue>();
  for (const { parameter, value } of use.arguments) {
    if (parameter?.ref !== undefined && value !== undefined) bindings.set(parameter.ref, value);
  }
  return bindings;
}

/** The parameter that a value is the default of, or an argument for; undefined for what is neither. */
export function parameterOf(value: AstNode | undefined): Parameter | undefined {
  const around = value?.$container;
  if (isParameter(around)) return around;
  return isArgument(around) ? around.parameter?.ref : undefined;
}

/** The number that stands here, or that its parameter stands for; undefined where that is not known. */
export function numberOf(count: Count | undefined, bindings: Bindings = NO_BINDINGS): number | undefined {
  if (count === undefined || count.value !== undefined) return count?.value;
  const argument = argumentOf(count.parameter?.ref, bindings);
  return isAmountValue(argument) && argument.quantity.unit === undefined
    ? argument.quantity.value
    : undefined;
}

/** The amount that stands here, or that its parameter stands for; undefined where that is not known. */
export function amountOf(quantity: Quantity, bindings: Bindings = NO_BINDINGS): Quantity | undefined {
  if (quantity.parameter === undefined) return quantity;
  const argument = argumentOf(quantity.parameter.ref, bindings);
  return isAmountValue(argument) ? argument.quantity : undefined;
}

/** The parameters that can be named here: those of the drill around, or of the drill that is used. */
export function parametersAt(node: AstNode): readonly Parameter[] {
  const use = AstUtils.getContainerOfType(node, isDrillUse);
  if (use !== undefined) return use.drill?.ref?.parameters ?? [];
  return AstUtils.getContainerOfType(node, isDrill)?.parameters ?? [];
}

/** Where the number is written that stands here: of a parameter, its default. Undefined where that is somewhere else. */
export function placeOfNumber(count: Count | undefined): CstNode | undefined {
  if (count?.parameter === undefined) return count?.$cstNode;
  const value = count.parameter.ref?.value;
  return isAmountValue(value)
    ? GrammarUtils.findNodeForProperty(value.quantity.$cstNode, "value")
    : undefined;
}
