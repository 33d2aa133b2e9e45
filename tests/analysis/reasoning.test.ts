/** No reading that can be is ever called impossible. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Box } from "../../language/analysis/reasoning/box.ts";
import { propagate } from "../../language/analysis/reasoning/propagate.ts";
import type { Proposition } from "../../language/analysis/reasoning/proposition.ts";
import {
  difference,
  otherFactor,
  product,
  quotient,
  sum,
  WHOLE,
} from "../../language/analysis/reasoning/range.ts";
import { metricsOf, type Relation } from "../../language/analysis/reasoning/relation.ts";
import { isPossible, rangeLeft, type World } from "../../language/analysis/reasoning/solve.ts";
import type { Expression } from "../../shared/plan-model.ts";
import type { Interval } from "../../shared/statistics/interval.ts";

type Values = Readonly<Record<string, number>>;

const BASE = ["a", "b", "c", "d"] as const;

/** Whole and broken numbers of either sign, zero among them; none so small that doubles run out of digits. */
const number = fc.oneof(
  fc.integer({ min: -20, max: 20 }),
  fc.double({ min: -50, max: 50, noNaN: true }).filter((value) => Math.abs(value) > 1e-6),
);

const expression: fc.Arbitrary<Expression> = fc.letrec<{ all: Expression }>((tie) => ({
  all: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    fc.constantFrom(...BASE).map((name): Expression => ({ kind: "metric", name })),
    number.map((value): Expression => ({ kind: "number", value })),
    fc.record({
      kind: fc.constant("operation" as const),
      operator: fc.constantFrom("+", "-", "*", "/"),
      left: tie("all"),
      right: tie("all"),
    }),
  ),
})).all;

/** Not a number where something is divided by 0 on the way, as no shot has such a reading. */
function evaluated(at: Expression, values: Values): number {
  if (at.kind === "number") return at.value;
  if (at.kind === "metric") return values[at.name] ?? Number.NaN;
  const result = OPERATIONS[at.operator](evaluated(at.left, values), evaluated(at.right, values));
  return Number.isFinite(result) ? result : Number.NaN;
}

const OPERATIONS = {
  "+": (left: number, right: number) => left + right,
  "-": (left: number, right: number) => left - right,
  "*": (left: number, right: number) => left * right,
  "/": (left: number, right: number) => left / right,
};

/** A range around a number; the number may be at an end. */
const around = (value: number) =>
  fc
    .tuple(
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.nat(5),
    )
    .map(
      ([below, above, open]): Interval => ({
        low: open === 0 ? WHOLE.low : value - below,
        high: open === 1 ? WHOLE.high : value + above,
      }),
    );

/** Readings, and relations that hold of them: formulas of the base metrics, and of formulas. */
const situation = fc
  .record({
    readings: fc.record({ a: number, b: number, c: number, d: number }),
    formulas: fc.array(expression, { minLength: 1, maxLength: 4 }),
  })
  .map(({ readings, formulas }) => {
    const values: Record<string, number> = { ...readings };
    const relations: Relation[] = [];
    for (const [index, formula] of formulas.entries()) {
      const name = `f${index}`;
      const value = evaluated(formula, values);
      if (!Number.isFinite(value)) continue;
      values[name] = value;
      const whole: Expression = {
        kind: "operation",
        operator: "-",
        left: formula,
        right: { kind: "metric", name },
      };
      // The readings are rounded to doubles, so that the relation holds up to rounding only.
      const slack = 1e-9 * Math.max(1, sizeOf(formula, values));
      relations.push({
        expression: whole,
        range: { low: 0, high: 0 },
        slack,
        says: name,
        metrics: metricsOf(whole),
      });
    }
    return { values, relations };
  });

/** The largest number that occurs while it is computed. */
function sizeOf(at: Expression, values: Values): number {
  const own = Math.abs(evaluated(at, values));
  return at.kind === "operation" ? Math.max(own, sizeOf(at.left, values), sizeOf(at.right, values)) : own;
}

describe("ranges", () => {
  const pair = fc
    .tuple(number, number)
    .chain(([x, y]) => fc.record({ x: fc.constant(x), y: fc.constant(y), one: around(x), other: around(y) }));
  test.each([
    ["sum", sum, (x: number, y: number) => x + y],
    ["difference", difference, (x: number, y: number) => x - y],
    ["product", product, (x: number, y: number) => x * y],
    ["quotient", quotient, (x: number, y: number) => x / y],
  ] as const)("hold the %s of what they hold", (_, ofRanges, ofNumbers) => {
    fc.assert(
      fc.property(pair, ({ x, y, one, other }) => {
        const value = ofNumbers(x, y);
        fc.pre(Number.isFinite(value));
        const { low, high } = ofRanges(one, other);
        expect(low <= value && value <= high, `${low} ${value} ${high}`).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test("hold the other factor, up to rounding", () => {
    fc.assert(
      fc.property(pair, around(0), ({ x, y, one }, extra) => {
        const whole = { low: x * y + Math.min(0, extra.low), high: x * y + Math.max(0, extra.high) };
        const { low, high } = otherFactor(whole, one);
        const slack = 1e-9 * Math.max(1, Math.abs(y));
        expect(low - slack <= y && y <= high + slack).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    [quotient({ low: 1, high: 2 }, { low: -1, high: 1 }), WHOLE],
    [quotient({ low: 1, high: 2 }, { low: 0, high: 4 }), { low: 0.25, high: Number.POSITIVE_INFINITY }],
    [quotient({ low: 1, high: 2 }, { low: -4, high: 0 }), { low: Number.NEGATIVE_INFINITY, high: -0.25 }],
    [otherFactor({ low: -1, high: 1 }, { low: 0, high: 4 }), WHOLE],
    [product({ low: 0, high: 0 }, WHOLE), { low: 0, high: 0 }],
  ])("by zero: %o", (found, expected) => {
    expect(found.low).toBeCloseTo(expected.low, 12);
    expect(found.high).toBeCloseTo(expected.high, 12);
  });
});

test("narrowing never loses readings for which every relation holds", () => {
  fc.assert(
    fc.property(
      situation.chain((given) =>
        fc.record({
          given: fc.constant(given),
          ranges: fc.record(
            Object.fromEntries(Object.entries(given.values).map(([name, value]) => [name, around(value)])),
            { requiredKeys: [] },
          ),
        }),
      ),
      ({ given: { values, relations }, ranges }) => {
        const box = new Box(() => WHOLE);
        for (const [name, range] of Object.entries(ranges)) if (range !== undefined) box.narrow(name, range);
        expect(propagate(box, relations)).toBe(true);
        for (const [name, value] of Object.entries(values)) {
          const { low, high } = box.range(name);
          expect(low <= value && value <= high, `${name}: ${low} ${value} ${high}`).toBe(true);
        }
      },
    ),
    { numRuns: 3000 },
  );
});

/** A proposition about the metrics of a shot; of two choices one is true where it is to be. */
const proposition = (values: Values, depth = 2): fc.Arbitrary<Proposition> => {
  const names = Object.keys(values);
  const truth = fc
    .constantFrom(...names)
    .chain((metric) =>
      around(values[metric] ?? 0).map((range): Proposition => ({ kind: "number", metric, range })),
    );
  const noise = fc
    .tuple(fc.constantFrom(...names), number)
    .chain(([metric, value]) =>
      around(value).map((range): Proposition => ({ kind: "number", metric, range })),
    );
  if (depth === 0) return truth;
  const inner = proposition(values, depth - 1);
  return fc.oneof(
    truth,
    fc.array(inner, { minLength: 1, maxLength: 3 }).map((of): Proposition => ({ kind: "all", of })),
    fc
      .tuple(fc.array(noise, { maxLength: 3 }), inner, fc.array(noise, { maxLength: 2 }))
      .map(([before, one, after]): Proposition => ({ kind: "any", of: [...before, one, ...after] })),
  );
};

test("a shot that makes everything true is possible, and its readings are left", () => {
  fc.assert(
    fc.property(
      situation.chain(({ values, relations }) =>
        fc.record({
          values: fc.constant(values),
          relations: fc.constant(relations),
          asked: fc.array(proposition(values), { minLength: 1, maxLength: 8 }),
        }),
      ),
      ({ values, relations, asked }) => {
        const world: World = { relations, domain: () => WHOLE };
        expect(isPossible(asked, world)).toBe(true);
        for (const [name, value] of Object.entries(values)) {
          const { low, high } = rangeLeft(name, asked, world);
          expect(low <= value && value <= high, name).toBe(true);
        }
      },
    ),
    { numRuns: 2000 },
  );
});

function isTrue(at: Proposition, values: Values): boolean {
  switch (at.kind) {
    case "number": {
      const value = values[at.metric] ?? Number.NaN;
      return at.range.low <= value && value <= at.range.high;
    }
    case "names":
      return true;
    case "all":
      return at.of.every((part) => isTrue(part, values));
    case "any":
      return at.of.some((part) => isTrue(part, values));
  }
}

test("what is called impossible is found by no search over a grid", () => {
  const metrics = ["x", "y", "z"];
  const grid = Array.from({ length: 25 }, (_, index) => index - 12);
  const difference: Expression = {
    kind: "operation",
    operator: "-",
    left: {
      kind: "operation",
      operator: "-",
      left: { kind: "metric", name: "x" },
      right: { kind: "metric", name: "y" },
    },
    right: { kind: "metric", name: "z" },
  };
  const relations = [
    {
      expression: difference,
      range: { low: 0, high: 0 },
      slack: 0,
      says: "",
      metrics: metricsOf(difference),
    },
  ];
  const shots = grid.flatMap((x) => grid.map((y): Values => ({ x, y, z: x - y })));
  const atom = fc
    .record({ metric: fc.constantFrom(...metrics), low: fc.integer({ min: -12, max: 12 }), width: fc.nat(6) })
    .map(
      ({ metric, low, width }): Proposition => ({
        kind: "number",
        metric,
        range: { low, high: low + width },
      }),
    );
  const choice = fc
    .array(atom, { minLength: 1, maxLength: 3 })
    .map((of): Proposition => ({ kind: "any", of }));
  const domain = () => ({ low: -24, high: 24 });
  let impossible = 0;
  let possible = 0;
  fc.assert(
    fc.property(fc.array(fc.oneof(atom, choice), { minLength: 2, maxLength: 5 }), (asked) => {
      const found = shots.find((values) => asked.every((one) => isTrue(one, values)));
      if (isPossible(asked, { relations, domain })) possible++;
      else {
        impossible++;
        expect(found).toBeUndefined();
      }
    }),
    { numRuns: 2000, seed: 20261126 },
  );
  // Both happen often enough to say something.
  expect(Math.min(impossible, possible)).toBeGreaterThan(300);
});

test("of simple conflicts none is overlooked: one relation and no choice", () => {
  const given = (name: string, low: number, high: number): Proposition => ({
    kind: "number",
    metric: name,
    range: { low, high },
  });
  const total: Expression = {
    kind: "operation",
    operator: "-",
    left: {
      kind: "operation",
      operator: "+",
      left: { kind: "metric", name: "x" },
      right: { kind: "metric", name: "y" },
    },
    right: { kind: "metric", name: "z" },
  };
  const relations = [
    { expression: total, range: { low: 0, high: 0 }, slack: 0, says: "", metrics: ["x", "y", "z"] },
  ];
  const range = fc
    .tuple(fc.integer({ min: -9, max: 9 }), fc.nat(5))
    .map(([low, width]) => [low, low + width] as const);
  fc.assert(
    fc.property(range, range, range, (x, y, z) => {
      const isThere = x[0] + y[0] <= z[1] && z[0] <= x[1] + y[1];
      const asked = [given("x", ...x), given("y", ...y), given("z", ...z)];
      expect(isPossible(asked, { relations, domain: () => WHOLE })).toBe(isThere);
    }),
    { numRuns: 1000 },
  );
});
