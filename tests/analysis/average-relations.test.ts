/** Which formulas hold of averages: those whose average is their value at the averages. */
import { expect, test } from "vitest";
import { isLinear } from "../../language/analysis/possibility/average-relations.ts";
import { derive } from "../../server/import/derive/derive.ts";
import type { Expression } from "../../shared/plan-model.ts";

type Operator = "+" | "-" | "*" | "/";

const [a, b] = ["a", "b"].map((name): Expression => ({ kind: "metric", name })) as [Expression, Expression];
const two: Expression = { kind: "number", value: 2 };
const of = (left: Expression, operator: Operator, right: Expression): Expression => ({
  kind: "operation",
  operator,
  left,
  right,
});

test.each([
  ["a + b", of(a, "+", b), true],
  ["a - 2", of(a, "-", two), true],
  ["2 * a", of(two, "*", a), true],
  ["a * 2", of(a, "*", two), true],
  ["a / 2", of(a, "/", two), true],
  ["(2 + 2) * a - b", of(of(of(two, "+", two), "*", a), "-", b), true],
  ["2 / a", of(two, "/", a), false],
  ["a * b", of(a, "*", b), false],
  ["a / b", of(a, "/", b), false],
  ["b + 2 / a", of(b, "+", of(two, "/", a)), false],
  ["a * a / 2", of(of(a, "*", a), "/", two), false],
])("%s", (_, expression, expected) => {
  const at = (a: number, b: number) => {
    const values: Record<string, number> = { a, b };
    derive(values, [{ name: "c", expression }]);
    return values.c ?? Number.NaN;
  };
  const isAverage = Math.abs((at(1, 2) + at(5, 3)) / 2 - at(3, 2.5)) < 1e-12;
  expect([isAverage, isLinear(expression)]).toEqual([expected, expected]);
});
