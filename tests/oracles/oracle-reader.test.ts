import { expect, test } from "vitest";
import { expectNear, numberIn, numbersIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";

test("cells stay text", () => {
  const [row] = oracleRows("statistics/mean_intervals.csv", ["data", "n"]);
  expect(row).toMatchObject({ data: "1.34;-0.74;5.05", n: "3" });
});

test("no rows, no such column or no such table is an error", () => {
  expect(() => oracleRows("statistics/cdf.csv", ["x"], () => false)).toThrow("no row");
  expect(() => oracleRows("statistics/cdf.csv", ["x", "height"])).toThrow('no column "height"');
  expect(() => oracleRows("statistics/nowhere.csv", ["x"])).toThrow();
});

test("an empty cell is none, never zero", () => {
  expect(optionalNumberIn("")).toBeUndefined();
  expect(() => numberIn("")).toThrow();
  expect(() => numberIn("never")).toThrow();
  expect(() => numbersIn("1;;2")).toThrow();
  expect(numbersIn("-inf;0;2.5;inf")).toEqual([-Infinity, 0, 2.5, Infinity]);
});

test("a number too far off, none at all or NaN is not near", () => {
  expectNear(1.01, 1, { relative: 0.02 }, {});
  expectNear(100.5, 100, { absolute: 0.5 }, {});
  expect(() => expectNear(1.01, 1, { relative: 0.001 }, {})).toThrow("got 1.01");
  expect(() => expectNear(undefined, 1, { absolute: 1 }, {})).toThrow();
  expect(() => expectNear(Number.NaN, 1, { absolute: 1 }, {})).toThrow();
});
