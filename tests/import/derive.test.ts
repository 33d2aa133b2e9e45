import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { derive, type Formula } from "../../server/import/derive/derive.ts";
import type { Expression } from "../../shared/plan-model.ts";
import { column, metricColumn } from "../support/scoring-input.ts";
import { importTable, readings } from "./import-table.ts";

const name = (name: string): Expression => ({ kind: "metric", name });
const number = (value: number): Expression => ({ kind: "number", value });
const operation = (left: Expression, operator: "+" | "-" | "*" | "/", right: Expression): Expression => ({
  kind: "operation",
  operator,
  left,
  right,
});

/** What is known after deriving, and what of it was derived. */
function derived(values: Record<string, number>, formulas: Record<string, Expression>) {
  const known = { ...values };
  const list: Formula[] = Object.entries(formulas).map(([name, expression]) => ({ name, expression }));
  return [known, derive(known, list)];
}

test("a metric follows from the ones that are known", () => {
  expect(derived({ a: 6, b: 3 }, { c: operation(name("a"), "/", name("b")) })).toEqual([
    { a: 6, b: 3, c: 2 },
    ["c"],
  ]);
});

test("what was measured is kept", () => {
  expect(derived({ a: 6, b: 3, c: 9 }, { c: operation(name("a"), "-", name("b")) })).toEqual([
    { a: 6, b: 3, c: 9 },
    [],
  ]);
});

test("a metric may follow over others, in whatever order they are declared", () => {
  const formulas = { c: operation(name("b"), "*", number(2)), b: operation(name("a"), "+", number(1)) };
  expect(derived({ a: 1 }, formulas)).toEqual([{ a: 1, b: 2, c: 4 }, ["b", "c"]]);
});

describe("a metric stays unknown", () => {
  test.each([
    ["where an operand is unknown", operation(name("a"), "-", name("x"))],
    ["after a division by zero", operation(name("a"), "/", number(0))],
    ["after zero divided by zero", operation(number(0), "/", number(0))],
    [
      "where a division by zero would vanish later",
      operation(number(1), "/", operation(name("a"), "/", number(0))),
    ],
    ["where the result is too large", operation(number(1e308), "*", number(10))],
    ["where an operand only looks like something every object has", name("constructor")],
  ])("%s", (_, formula) => {
    expect(derived({ a: 1 }, { c: formula })).toEqual([{ a: 1 }, []]);
  });

  test("where formulas only lead back to themselves", () => {
    const formulas = {
      a: operation(name("b"), "+", number(1)),
      b: operation(name("a"), "-", number(1)),
      c: name("c"),
    };
    expect(derived({}, formulas)).toEqual([{}, []]);
    expect(derived({ a: 3 }, formulas)).toEqual([{ a: 3, b: 2 }, ["b"]]);
  });
});

test("whatever the formulas, it ends, replaces nothing and adds only finite numbers", () => {
  const names = fc.constantFrom("a", "b", "c", "d", "e");
  const { expression } = fc.letrec<{ expression: Expression }>((tie) => ({
    expression: fc.oneof(
      { maxDepth: 3 },
      names.map(name),
      fc.double({ noNaN: true }).map(number),
      fc
        .tuple(
          tie("expression"),
          fc.constantFrom("+" as const, "-" as const, "*" as const, "/" as const),
          tie("expression"),
        )
        .map(([left, operator, right]) => operation(left, operator, right)),
    ),
  }));
  fc.assert(
    fc.property(
      fc.dictionary(names, fc.integer()),
      fc.dictionary(names, expression),
      (measured, formulas) => {
        const [known, added] = derived(measured, formulas) as [Record<string, number>, string[]];
        expect(known).toMatchObject(measured);
        expect(Object.keys(known).sort()).toEqual([...Object.keys(measured), ...added].sort());
        expect(Object.values(known).every(Number.isFinite)).toBe(true);
      },
    ),
  );
});

test("shots say what was derived", () => {
  const data = importTable("Club speed;Ball speed;Smash\n40;56;\n40;56;1.3\n0;56;\n", {
    columns: [
      column("Club speed", metricColumn("club-speed", "m/s")),
      column("Ball speed", metricColumn("ball-speed", "m/s")),
      column("Smash", metricColumn("smash-factor", "one")),
    ],
  });
  expect(readings(data, "smash-factor")).toEqual([1.4, 1.3, undefined]);
  expect(data.shots.map(({ derived }) => derived)).toEqual([["smash-factor"], [], []]);
});
