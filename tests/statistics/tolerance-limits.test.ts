import { expect, test } from "vitest";
import { meanLimits } from "../../shared/statistics/student.ts";
import { normalPercentileLimits, toleranceFactor } from "../../shared/statistics/tolerance-limits.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { sampleWith, shotsFrom } from "./samples.ts";

const relative = 1e-8;

test("the factors of the reference table", () => {
  for (const row of oracleRows("statistics/tolerance_factors.csv", [
    "n",
    "content",
    "confidence",
    "k_one_sided",
  ])) {
    const actual = toleranceFactor(numberIn(row.n), numberIn(row.content), numberIn(row.confidence));
    expectNear(actual, numberIn(row.k_one_sided), { relative }, row);
  }
});

test("the median of the model is its mean", () => {
  const shots = sampleWith([3, 5, 4, 8, 6]);
  const [median, mean] = [normalPercentileLimits(shots, 0.5, 0.9), meanLimits(shots, 0.9)];
  expectNear(median?.low, mean?.low ?? Number.NaN, { relative: 1e-9 }, {});
  expectNear(median?.high, mean?.high ?? Number.NaN, { relative: 1e-9 }, {});
});

test("the promise is kept for normal shots, on both sides", () => {
  const { normal } = shotsFrom(37);
  const [lower, upper] = [0.1, 0.9].map((error) => toleranceFactor(8, 0.9, error)) as [number, number];
  const truth = 1.2815515655446;
  const tries = 4000;
  const wrong = { low: 0, high: 0 };
  for (let trial = 0; trial < tries; trial++) {
    const { mean, sd = Number.NaN } = sampleWith(Array.from({ length: 8 }, normal));
    if (mean + lower * sd > truth) wrong.low++;
    if (mean + upper * sd < truth) wrong.high++;
  }
  expectNear(wrong.low / tries, 0.1, { absolute: 0.02 }, {});
  expectNear(wrong.high / tries, 0.1, { absolute: 0.02 }, {});
});

test("a single shot, or a confidence that is none, has no limits", () => {
  expect(normalPercentileLimits({ n: 1, mean: 3, sd: undefined }, 0.9, 0.9)).toBeUndefined();
  expect(normalPercentileLimits({ n: 5, mean: 3, sd: 1 }, 0.9, 1)).toBeUndefined();
  expect(normalPercentileLimits({ n: 5, mean: 3, sd: 1 }, 1, 0.9)).toBeUndefined();
});
