import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mean, median, quantile, sampleOf, standardDeviation } from "../../shared/statistics/summary.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { nistData } from "./nist.ts";

/** A decimal reading, as a display shows it. */
const reading = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((hundredths) => hundredths / 100);

describe("mean and standard deviation", () => {
  // The limit is what the data still hold in double precision: NumAcc4 is 10000000.1, 10000000.3, …
  const digitsOfSd = (dataSet: string) => ({ NumAcc3: 9, NumAcc4: 8 })[dataSet] ?? 13;

  test.each(
    oracleRows("statistics/nist_univariate_certified.csv", [
      "data_set",
      "n",
      "mean_17_digits",
      "sd_17_digits",
    ]),
  )("NIST reference data $data_set", (row) => {
    const values = nistData(row.data_set);
    expect(values).toHaveLength(numberIn(row.n));
    expectNear(mean(values), numberIn(row.mean_17_digits), { relative: 1e-13 }, row);
    const relative = 10 ** -digitsOfSd(row.data_set);
    expectNear(standardDeviation(values), numberIn(row.sd_17_digits), { relative }, row);
  });

  test("a spread at the last digits, where the mean itself cannot be written", () => {
    expectNear(standardDeviation([1e16, 1e16 + 2]), Math.SQRT2, { relative: 1e-15 }, {});
  });

  test("equal values have exactly that mean and no spread", () => {
    fc.assert(
      fc.property(reading, fc.integer({ min: 2, max: 40 }), (x, n) => {
        expect(sampleOf(Array(n).fill(x))).toEqual({ n, mean: x, sd: 0 });
      }),
    );
  });
});

test("median: the middle value, or the mean of the two middle ones", () => {
  expect(median([7, 1, 3])).toBe(3);
  expect(median([7, 1, 3, 4])).toBe(3.5);
  expect(median([-2])).toBe(-2);
});

test("sample quantiles are of type 7", () => {
  for (const row of oracleRows("statistics/sample_quantiles.csv", ["data", "p", "type_7"])) {
    const actual = quantile(numbersIn(row.data), numberIn(row.p));
    expectNear(actual, numberIn(row.type_7), { absolute: 1e-9 }, row);
  }
});

test("a quantile lies between the extremes and never falls as p rises", () => {
  const values = fc.array(reading, { minLength: 1, maxLength: 30 });
  const share = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);
  fc.assert(
    fc.property(values, share, share, (list, p, q) => {
      const [low, high] = [quantile(list, Math.min(p, q)), quantile(list, Math.max(p, q))];
      expect(quantile(list, 0)).toBe(Math.min(...list));
      expect(quantile(list, 1)).toBe(Math.max(...list));
      expect(low).toBeLessThanOrEqual((high ?? Number.NaN) + 1e-9);
    }),
  );
});

describe("too few values", () => {
  test("without values nothing is described", () => {
    expect([sampleOf([]), mean([]), standardDeviation([]), median([]), quantile([], 0.5)]).toEqual(
      Array(5).fill(undefined),
    );
  });

  test("one value has a mean and quantiles, but no spread", () => {
    expect(sampleOf([4])).toEqual({ n: 1, mean: 4, sd: undefined });
    expect(standardDeviation([4])).toBeUndefined();
    expect(quantile([4], 0.9)).toBe(4);
  });

  test("no quantile outside 0 … 1", () => {
    expect(quantile([1, 2], 1.1)).toBeUndefined();
    expect(quantile([1, 2], Number.NaN)).toBeUndefined();
  });
});
