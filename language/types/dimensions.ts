/** Dimension inference: which dimension a formula has. */
import {
  type BinaryExpression,
  type Dimension,
  type Expression,
  isBinaryExpression,
  isMetricOperand,
  type Quantity,
} from "../generated/tree/ast.ts";
import { dimensionOfUnit } from "./units.ts";

/** Exponents of the base dimensions; those with exponent 0 are left out. A plain number has none at all. */
export type DimensionVector = ReadonlyMap<string, number>;

export const DIMENSIONLESS: DimensionVector = new Map();

/** Longest chain of definitions that is followed. */
const LONGEST_CHAIN = 100;

/** The base dimensions a dimension is made of. One that is defined by itself counts as a base dimension. */
export function vectorOf(dimension: Dimension): DimensionVector {
  const known = new Map<Dimension, DimensionVector>();
  const open = new Set<Dimension>();
  const find = (at: Dimension): DimensionVector => {
    const left = at.left?.ref;
    const right = at.right?.ref;
    if (left === undefined || right === undefined || open.has(at) || open.size === LONGEST_CHAIN) {
      return isPlainNumber(at) ? DIMENSIONLESS : new Map([[at.name, 1]]);
    }
    let vector = known.get(at);
    if (vector === undefined) {
      open.add(at);
      vector = combine(find(left), find(right), at.operator === "/" ? -1 : 1);
      open.delete(at);
      known.set(at, vector);
    }
    return vector;
  };
  return find(dimension);
}

/** A dimension of plain numbers has the unit one, which has no name. */
export function isPlainNumber(dimension: Dimension): boolean {
  const first = dimension.units[0];
  return first !== undefined && first.names.length === 0;
}

/** `left` times `right` to the power of `sign`. */
export function combine(left: DimensionVector, right: DimensionVector, sign: 1 | -1): DimensionVector {
  const result = new Map(left);
  for (const [name, exponent] of right) {
    const sum = (result.get(name) ?? 0) + sign * exponent;
    if (sum === 0) result.delete(name);
    else result.set(name, sum);
  }
  return result;
}

export function sameDimension(left: DimensionVector, right: DimensionVector): boolean {
  return left.size === right.size && [...left].every(([name, exponent]) => right.get(name) === exponent);
}

/** The dimension of an expression, or undefined where a name in it is unknown or a sum in it does not fit. */
export function inferDimension(expression: Expression): DimensionVector | undefined {
  if (isBinaryExpression(expression)) {
    const left = inferDimension(expression.left);
    const right = inferDimension(expression.right);
    if (left === undefined || right === undefined) return undefined;
    if (expression.operator === "*") return combine(left, right, 1);
    if (expression.operator === "/") return combine(left, right, -1);
    return sameDimension(left, right) ? left : undefined;
  }
  return dimensionOfOperand(expression);
}

/** The dimension of a metric or an amount in a formula. */
export function dimensionOfOperand(
  operand: Exclude<Expression, BinaryExpression>,
): DimensionVector | undefined {
  if (!isMetricOperand(operand)) return dimensionOfQuantity(operand.quantity);
  const dimension = operand.metric?.ref?.dimension?.ref;
  return dimension === undefined ? undefined : vectorOf(dimension);
}

/** The dimension of an amount: that of its unit; a plain number where there is none. */
export function dimensionOfQuantity(quantity: Quantity): DimensionVector | undefined {
  if (quantity.unit === undefined) return DIMENSIONLESS;
  const unit = quantity.unit.ref;
  return unit === undefined ? undefined : vectorOf(dimensionOfUnit(unit));
}

/** A vector in words: `length / duration`. */
export function describeVector(vector: DimensionVector): string {
  const part = ([name, exponent]: [string, number]): string =>
    Math.abs(exponent) === 1 ? name : `${name}^${Math.abs(exponent)}`;
  const above = [...vector].filter(([, exponent]) => exponent > 0).map(part);
  const below = [...vector].filter(([, exponent]) => exponent < 0).map(part);
  if (above.length === 0 && below.length === 0) return "a plain number";
  return [above.join(" · ") || "1", ...below].join(" / ");
}
