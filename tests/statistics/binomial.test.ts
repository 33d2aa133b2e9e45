import { expect, test } from "vitest";
import {
  binomialAtLeast,
  binomialAtMost,
  binomialProbabilities,
  MOST_TRIALS,
} from "../../shared/statistics/binomial.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";

const absolute = 1e-12;

test("probabilities and tails", () => {
  const columns = ["n", "x", "p", "pmf", "prob_at_most_x", "prob_at_least_x"] as const;
  for (const row of oracleRows("statistics/binomial_tails.csv", columns)) {
    const [x, n, p] = [numberIn(row.x), numberIn(row.n), numberIn(row.p)];
    expectNear(binomialProbabilities(n, p)[x], numberIn(row.pmf), { absolute }, row);
    expectNear(binomialAtMost(x, n, p), numberIn(row.prob_at_most_x), { absolute }, row);
    expectNear(binomialAtLeast(x, n, p), numberIn(row.prob_at_least_x), { absolute }, row);
  }
});

test("a fair coin three times", () => {
  expect(binomialProbabilities(3, 0.5)).toEqual([0.125, 0.375, 0.375, 0.125]);
});

test("nothing overflows with many shots", () => {
  const probabilities = binomialProbabilities(5000, 0.5);
  expectNear(probabilities[2500], 0.01128322, { relative: 1e-6 }, {});
  expect(probabilities[0]).toBe(0);
});

test("certain hits, certain misses and no shots", () => {
  expect(binomialProbabilities(2, 1)).toEqual([0, 0, 1]);
  expect(binomialProbabilities(2, 0)).toEqual([1, 0, 0]);
  expect(binomialProbabilities(0, 0.7)).toEqual([1]);
});

test("counts that cannot occur have probability 0", () => {
  expect(binomialAtLeast(4, 3, 0.5)).toBe(0);
  expect(binomialAtMost(-1, 3, 0.5)).toBe(0);
});

test.each([
  [-1, 0.5],
  [2.5, 0.5],
  [MOST_TRIALS + 1, 0.5],
  [Number.POSITIVE_INFINITY, 0.5],
  [3, 1.2],
  [3, Number.NaN],
])("no probabilities for n = %s, p = %s", (n, p) => {
  expect(binomialProbabilities(n, p)).toEqual([]);
  expect(binomialAtMost(1, n, p)).toBeNaN();
  expect(binomialAtLeast(1, n, p)).toBeNaN();
});
