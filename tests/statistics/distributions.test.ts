import { expect, test } from "vitest";
import {
  betaQuantile,
  chiSquareQuantile,
  normalCdf,
  normalQuantile,
  studentCdf,
  studentQuantile,
} from "../../shared/statistics/distributions.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";

const relative = 1e-12;

const quantiles: Record<string, (p: number, first: string, second: string) => number> = {
  normal: (p) => normalQuantile(p),
  t: (p, degrees) => studentQuantile(p, numberIn(degrees)),
  chisq: (p, degrees) => chiSquareQuantile(p, numberIn(degrees)),
  beta: (p, a, b) => betaQuantile(p, numberIn(a), numberIn(b)),
};

test.each(Object.entries(quantiles))("quantiles of the %s distribution", (distribution, quantile) => {
  const columns = ["distribution", "p", "df1_or_a", "df2_or_b", "quantile"] as const;
  for (const row of oracleRows("statistics/quantiles.csv", columns, (r) => r.distribution === distribution)) {
    const actual = quantile(numberIn(row.p), row.df1_or_a, row.df2_or_b);
    expectNear(actual, numberIn(row.quantile), { relative }, row);
  }
});

const lowerTails: Record<string, (x: number, degrees: string) => number> = {
  normal: (x) => normalCdf(x),
  t: (x, degrees) => studentCdf(x, numberIn(degrees)),
};

test.each(Object.entries(lowerTails))("both tails of the %s distribution", (distribution, lowerTail) => {
  const columns = ["distribution", "x", "df1_or_a", "lower_tail", "upper_tail"] as const;
  for (const row of oracleRows("statistics/cdf.csv", columns, (r) => r.distribution === distribution)) {
    const x = numberIn(row.x);
    expectNear(lowerTail(x, row.df1_or_a), numberIn(row.lower_tail), { relative }, row);
    expectNear(lowerTail(-x, row.df1_or_a), numberIn(row.upper_tail), { relative }, row);
  }
});

test("outside the domain the answer is NaN", () => {
  expect(normalQuantile(1.2)).toBeNaN();
  expect(studentQuantile(0.9, 0)).toBeNaN();
  expect(chiSquareQuantile(-0.1, 4)).toBeNaN();
  expect(betaQuantile(0.9, 0, 3)).toBeNaN();
});
