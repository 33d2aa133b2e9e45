import { describe, expect, test } from "vitest";
import { readingErrors } from "../../server/scoring/uncertainty/reading-errors.ts";
import type { Expression, Instrument, Metric } from "../../shared/plan-model.ts";
import { metric, NOWHERE } from "../support/scoring-input.ts";

/** `a - b`, `a / b`, `2 * a + b`: from left to right, without precedence. */
function formula(text: string): Expression {
  const [first = "", ...rest] = text.split(" ");
  let expression = operand(first);
  for (let place = 0; place < rest.length; place += 2) {
    const operator = rest[place] as "+";
    expression = { kind: "operation", operator, left: expression, right: operand(rest[place + 1] ?? "") };
  }
  return expression;
}

function operand(text: string): Expression {
  const value = Number(text);
  return Number.isNaN(value) ? { kind: "metric", name: text } : { kind: "number", value };
}

/** `a 3 0.5`: metric, random, systematic; a club may follow. */
function stated(...lines: readonly string[]): Instrument {
  const uncertainties = lines.map((line) => {
    const [metric = "", random, systematic, club] = line.split(" ");
    const clubs = club === undefined ? [] : [club];
    return { metric, random: Number(random), systematic: Number(systematic), clubs, location: NOWHERE };
  });
  return { name: "Unit", uncertainties, location: NOWHERE };
}

function errorsOf(
  lines: readonly string[],
  formulas: Readonly<Record<string, string>>,
  values: Readonly<Record<string, number>>,
  club: string | null = null,
) {
  const vocabulary = new Map<string, Metric>(
    Object.entries(formulas).map(([name, text]) => [name, metric(name, { formula: formula(text) })]),
  );
  const of = readingErrors(stated(...lines), vocabulary);
  return (name: string) => {
    const errors = of(name, { values, categories: {}, club });
    return errors === null ? null : { random: errors.random, shared: Object.fromEntries(errors.shared) };
  };
}

describe("what is stated", () => {
  const lines = ["a 3 1", "a 2 1 driver"];

  test("for the club of the shot comes before what holds for any", () => {
    expect(errorsOf(lines, {}, { a: 1 }, "driver")("a")?.random).toBe(2);
    expect(errorsOf(lines, {}, { a: 1 }, "wedge")("a")?.random).toBe(3);
    expect(errorsOf(lines, {}, { a: 1 }, null)("a")?.random).toBe(3);
  });

  test("for other clubs alone says nothing of this one", () => {
    expect(errorsOf(["a 2 1 driver"], {}, { a: 1 }, "wedge")("a")).toBe(null);
  });

  test("of the metric itself comes before what its formula would give", () => {
    expect(errorsOf(["a 3 0", "d 1 0"], { d: "a + a" }, { a: 1 })("d")?.random).toBe(1);
  });

  test("of nothing: nothing is known", () => {
    expect(errorsOf(lines, {}, { b: 1 })("b")).toBe(null);
  });
});

describe("what follows by a formula", () => {
  test("differences: random parts by squares, the systematic ones each with its sign", () => {
    expect(errorsOf(["a 3 1", "b 4 2"], { d: "a - b" }, { a: 5, b: 7 })("d")).toEqual({
      random: 5,
      shared: { a: 1, b: -2 },
    });
  });

  test("an error that goes in twice is one error", () => {
    expect(errorsOf(["a 3 1"], { d: "a + a" }, { a: 5 })("d")).toEqual({ random: 6, shared: { a: 2 } });
    expect(errorsOf(["a 3 1"], { d: "a - a" }, { a: 5 })("d")).toBe(null);
  });

  test("over several formulas", () => {
    const formulas = { d: "a - b", e: "d + a" };
    expect(errorsOf(["a 3 1", "b 8 0"], formulas, { a: 5, b: 7, d: -2 })("e")).toEqual({
      random: 10,
      shared: { a: 2 },
    });
  });

  test("quotients and products: to first order", () => {
    // d = a/b at 6/3: ∂d/∂a = 1/3, ∂d/∂b = −6/9
    const quotient = errorsOf(["a 3 0.3", "b 3 0.3"], { d: "a / b" }, { a: 6, b: 3 })("d");
    expect(quotient?.random).toBeCloseTo(Math.sqrt(1 + 4), 12);
    expect(quotient?.shared.a).toBeCloseTo(0.1, 12);
    expect(quotient?.shared.b).toBeCloseTo(-0.2, 12);
    expect(errorsOf(["a 1 0", "b 1 0"], { d: "a * b" }, { a: 3, b: 4 })("d")?.random).toBe(5);
  });

  test("a factor that is missing leaves it unknown", () => {
    expect(errorsOf(["a 1 0"], { d: "a * b" }, { a: 3 })("d")).toBe(null);
  });

  test("formulas that lead back to themselves end", () => {
    expect(errorsOf(["a 1 0"], { d: "e + a", e: "d + a" }, { a: 1 })("d")).toEqual({
      random: 2,
      shared: {},
    });
  });
});
