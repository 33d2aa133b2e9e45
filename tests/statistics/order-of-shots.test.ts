import { expect, test } from "vitest";
import {
  lag1Autocorrelation,
  orderOfShots,
  worthInIndependentShots,
} from "../../shared/statistics/order-of-shots.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { nistData } from "./nist.ts";
import { shotsFrom } from "./samples.ts";

const relative = 1e-9;

test("the autocorrelation of the reference table", () => {
  for (const row of oracleRows("statistics/autocorrelation.csv", ["id", "data", "lag1_autocorrelation"])) {
    const actual = lag1Autocorrelation(numbersIn(row.data));
    expectNear(actual, numberIn(row.lag1_autocorrelation), { relative }, row);
  }
});

test.each(oracleRows("statistics/nist_univariate_certified.csv", ["data_set", "lag1_17_digits"]))(
  "NIST reference data $data_set",
  (row) => {
    const actual = lag1Autocorrelation(nistData(row.data_set));
    // NumAcc3 and NumAcc4 hold their first digits only: 10000000.2 is not exact in binary
    const digits = { NumAcc3: 9, NumAcc4: 8 }[row.data_set] ?? 13;
    expectNear(actual, numberIn(row.lag1_17_digits), { relative: 10 ** -digits }, row);
  },
);

test("what they are worth in independent shots", () => {
  const columns = ["n", "rho", "effective_n"] as const;
  for (const row of oracleRows("statistics/autocorrelation_inflation.csv", columns)) {
    const actual = worthInIndependentShots(numberIn(row.n), numberIn(row.rho));
    expectNear(actual, numberIn(row.effective_n), { relative }, row);
  }
});

test("a drift, a swing from side to side, and neither", () => {
  const rising = [1, 2.2, 2.8, 4.1, 5, 5.9, 7.2, 8, 9.1, 9.8];
  expect(orderOfShots(rising)).toMatchObject({ followsOn: true, drifts: true });
  expectNear(orderOfShots(rising)?.slope, 0.99, { absolute: 0.01 }, {});
  const swinging = [1, -1, 1.2, -0.8, 0.9, -1.1, 1, -1.3, 0.8, -1];
  expect(orderOfShots(swinging)).toMatchObject({ followsOn: true, drifts: false });
  const mixed = [0.3, -1.2, 0.8, 1.1, -0.4, 0.9, -0.7, 0.2, -1, 0.5];
  expect(orderOfShots(mixed)).toMatchObject({ followsOn: false, drifts: false });
});

test("a straight line drifts; nine shots, or equal ones, show nothing", () => {
  expect(orderOfShots([...Array(12).keys()])).toMatchObject({ slope: 1, drifts: true });
  expect(orderOfShots([...Array(9).keys()])).toBeUndefined();
  expect(orderOfShots(Array<number>(12).fill(3))).toBeUndefined();
  expect(lag1Autocorrelation([2, 2])).toBeUndefined();
});

test("independent shots are called drifting once in twenty times, and following on less", () => {
  const { normal } = shotsFrom(17);
  const tries = 3000;
  const seen = { drifts: 0, followsOn: 0 };
  for (let trial = 0; trial < tries; trial++) {
    const order = orderOfShots(Array.from({ length: 12 }, normal));
    if (order?.drifts) seen.drifts++;
    if (order?.followsOn) seen.followsOn++;
  }
  expect(seen.drifts / tries).toBeGreaterThan(0.03);
  expect(seen.drifts / tries).toBeLessThan(0.07);
  expect(seen.followsOn / tries).toBeLessThan(0.05);
});
