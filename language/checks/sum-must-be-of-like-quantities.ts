import { type BinaryExpression, type Expression, isBinaryExpression } from "../generated/tree/ast.ts";
import {
  combine,
  type DimensionVector,
  describeVector,
  dimensionOfOperand,
  sameDimension,
} from "../types/dimensions.ts";
import { type CheckContext, defineCheck } from "./check.ts";

/** A sum or difference of quantities of different kinds. */
export const check = defineCheck({
  on: ["Formula"],
  reason: "A length and a speed have no sum.",
  run({ expression }, { report }) {
    if (expression !== undefined) infer(expression, report);
  },
  reporting: `
metric reach is length {
  formula carry + «club-speed»
}

metric odd is ratio {
  formula (total - «face-angle») / carry
}`,
  silent: `
metric reach is length {
  formula carry + roll * 2
}`,
});

/** The dimension of an expression; sums that do not fit are reported, once each, from the inside out. */
function infer(expression: Expression, report: CheckContext["report"]): DimensionVector | undefined {
  if (!isBinaryExpression(expression)) return dimensionOfOperand(expression);
  const left = infer(expression.left, report);
  const right = infer(expression.right, report);
  if (left === undefined || right === undefined) return undefined;
  const { operator } = expression;
  if (operator === "*" || operator === "/") return combine(left, right, operator === "*" ? 1 : -1);
  if (sameDimension(left, right)) return left;
  const verb = operator === "+" ? "added to" : "taken from";
  report({
    message: `An amount of ${describeVector(right)} cannot be ${verb} one of ${describeVector(left)}. Only like and like have a sum: multiply or divide one of the two first.`,
    node: firstOperand(expression),
  });
  return undefined;
}

/** The place of a whole expression is that of its formula, so the mistake is shown at the operand behind the sign. */
function firstOperand({ right }: BinaryExpression): Expression {
  let operand = right;
  while (isBinaryExpression(operand)) operand = operand.left;
  return operand;
}
