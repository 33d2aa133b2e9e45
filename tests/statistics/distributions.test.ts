import { describe, expect, test } from "vitest";
import {
  betaQuantile,
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareUpperTail,
  exponential,
  fisherCdf,
  fisherQuantile,
  normalCdf,
  normalDensity,
  normalQuantile,
  studentCdf,
  studentQuantile,
} from "../../shared/statistics/distributions.ts";
import { chiSquareAt, MANY_DEGREES } from "../../shared/statistics/large-chi-square.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";

const relative = 1e-12;

const quantiles: Record<string, (p: number, first: string, second: string) => number> = {
  normal: (p) => normalQuantile(p),
  t: (p, degrees) => studentQuantile(p, numberIn(degrees)),
  chisq: (p, degrees) => chiSquareQuantile(p, numberIn(degrees)),
  beta: (p, a, b) => betaQuantile(p, numberIn(a), numberIn(b)),
  F: (p, first, second) => fisherQuantile(p, numberIn(first), numberIn(second)),
};

test.each(Object.entries(quantiles))("quantiles of the %s distribution", (distribution, quantile) => {
  const columns = ["distribution", "p", "df1_or_a", "df2_or_b", "quantile"] as const;
  for (const row of oracleRows("statistics/quantiles.csv", columns, (r) => r.distribution === distribution)) {
    const actual = quantile(numberIn(row.p), row.df1_or_a, row.df2_or_b);
    expectNear(actual, numberIn(row.quantile), { relative }, row);
  }
});

const tails: Record<string, (x: number, first: string, second: string) => [lower: number, upper: number]> = {
  normal: (x) => [normalCdf(x), normalCdf(-x)],
  t: (x, degrees) => [studentCdf(x, numberIn(degrees)), studentCdf(-x, numberIn(degrees))],
  chisq: (x, degrees) => [chiSquareCdf(x, numberIn(degrees)), chiSquareUpperTail(x, numberIn(degrees))],
  // b·X/(a·(1 − X)) of a beta variable X is F distributed
  beta: (x, a, b) => tailsOfF((x * numberIn(b)) / ((1 - x) * numberIn(a)), 2 * numberIn(a), 2 * numberIn(b)),
  F: (x, first, second) => tailsOfF(x, numberIn(first), numberIn(second)),
};

function tailsOfF(x: number, first: number, second: number): [number, number] {
  return [fisherCdf(x, first, second), fisherCdf(1 / x, second, first)];
}

test.each(Object.entries(tails))("both tails of the %s distribution", (distribution, tailsOf) => {
  const columns = ["distribution", "x", "df1_or_a", "df2_or_b", "lower_tail", "upper_tail"] as const;
  for (const row of oracleRows("statistics/cdf.csv", columns, (r) => r.distribution === distribution)) {
    const [lower, upper] = tailsOf(numberIn(row.x), row.df1_or_a, row.df2_or_b);
    expectNear(lower, numberIn(row.lower_tail), { relative }, row);
    expectNear(upper, numberIn(row.upper_tail), { relative }, row);
  }
});

describe("chi-square with many degrees of freedom", () => {
  test("the series goes on where the library ends", () => {
    for (const p of [0.001, 0.05, 0.3, 0.5, 0.8, 0.95, 0.999]) {
      const quantile = (degrees: number) => chiSquareQuantile(p, degrees);
      const gap = quantile(MANY_DEGREES + 1) - quantile(MANY_DEGREES);
      const before = quantile(MANY_DEGREES) - quantile(MANY_DEGREES - 1);
      expectNear(gap, before, { absolute: 1e-4 }, { p });
      expectNear(
        chiSquareAt(normalQuantile(p), MANY_DEGREES),
        quantile(MANY_DEGREES),
        { relative: 1e-11 },
        { p },
      );
    }
  });

  test("both tails are where the quantile has them", () => {
    for (const degrees of [1501, 2000, 9999, 100_000]) {
      for (const p of [0.01, 0.4, 0.9]) {
        const x = chiSquareQuantile(p, degrees);
        expectNear(chiSquareCdf(x, degrees), p, { relative: 1e-11 }, { degrees, p });
        expectNear(chiSquareUpperTail(x, degrees), 1 - p, { relative: 1e-11 }, { degrees, p });
      }
    }
  });

  test("far off they end", () => {
    expect([chiSquareCdf(0, 2000), chiSquareUpperTail(9000, 2000)].every((tail) => tail < 1e-15)).toBe(true);
    expect([chiSquareCdf(9000, 2000), chiSquareUpperTail(-5, 2000)].every((tail) => tail > 1 - 1e-14)).toBe(
      true,
    );
    expect(chiSquareCdf(Number.NaN, 2000)).toBeNaN();
  });
});

test("the normal density is the slope of its lower tail", () => {
  for (const z of [-2.3, -1, 0, 0.4, 3]) {
    const step = 1e-5;
    const slope = (normalCdf(z + step) - normalCdf(z - step)) / (2 * step);
    expectNear(normalDensity(z), slope, { relative: 1e-9 }, { z });
  }
});

test("powers of e", () => {
  expect(exponential(0)).toBe(1);
  expectNear(exponential(1), Math.E, { relative: 1e-15 }, {});
});

test("at the ends", () => {
  expect([chiSquareCdf(0, 3), chiSquareUpperTail(0, 3), fisherCdf(0, 3, 4)]).toEqual([0, 1, 0]);
  expect(fisherCdf(Number.POSITIVE_INFINITY, 3, 4)).toBe(1);
});

test("outside the domain the answer is NaN", () => {
  expect(normalQuantile(1.2)).toBeNaN();
  expect(studentQuantile(0.9, 0)).toBeNaN();
  expect(chiSquareQuantile(-0.1, 4)).toBeNaN();
  expect(betaQuantile(0.9, 0, 3)).toBeNaN();
  expect(fisherQuantile(0.9, 0, 3)).toBeNaN();
  expect(chiSquareCdf(2, 0)).toBeNaN();
  expect(fisherCdf(2, 3, -1)).toBeNaN();
});
