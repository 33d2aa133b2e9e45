import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isBlank, parseNumber } from "../../server/import/cells/number.ts";

describe("where decimals stand after a point", () => {
  test.each([
    ["7", 7],
    ["-3.25", -3.25],
    ["+3.25", 3.25],
    ["\u22123.25", -3.25],
    ["–3.25", -3.25],
    ["- 3.25", -3.25],
    [" 12.5 ", 12.5],
    ["\u00a012.5\u00a0", 12.5],
    [".5", 0.5],
    ["-.5", -0.5],
    ["5.", 5],
    ["007", 7],
    ["1.2e3", 1200],
    ["1.2E-3", 0.0012],
    ["1,234", 1234],
    ["1,234,567.8", 1234567.8],
    ["12 345.6", 12345.6],
    ["12\u00a0345.6", 12345.6],
    ["12\u202f345.6", 12345.6],
    ["12\u2009345.6", 12345.6],
    ["12'345.6", 12345.6],
    ["12’345.6", 12345.6],
  ])("%j is a number", (text, value) => {
    expect(parseNumber(text, "point")).toBe(value);
  });

  test.each([
    "",
    "-",
    "abc",
    "1.2.3",
    "1,23",
    "0,123",
    "12,34,567",
    "1234,567",
    "1,234 567",
    "1 23",
    "--3",
    "3-",
    "1e",
    "e5",
    ".",
    "NaN",
    "Infinity",
    "-Infinity",
    "∞",
    "1e999",
    "0x10",
    "1/2",
    "½",
    "(3.2)",
    "3.2 m",
    "１２",
  ])("%j is none", (text) => {
    expect(parseNumber(text, "point")).toBeUndefined();
  });
});

describe("where decimals stand after a comma", () => {
  test.each([
    ["3,25", 3.25],
    ["-3,25", -3.25],
    [",5", 0.5],
    ["1.234", 1234],
    ["1.234,5", 1234.5],
    ["1'234'567,8", 1234567.8],
  ])("%j is a number", (text, value) => {
    expect(parseNumber(text, "comma")).toBe(value);
  });

  test.each(["3.25", "0.123", "1,234,567", "1,2,3"])("%j is none", (text) => {
    expect(parseNumber(text, "comma")).toBeUndefined();
  });
});

test("zero has no sign", () => {
  expect(parseNumber("-0", "point")).toBe(0);
  expect(parseNumber("-0,0", "comma")).toBe(0);
});

test("every number is read back from the way JavaScript writes it, to the last bit", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      const expected = value === 0 ? 0 : value;
      expect(parseNumber(String(value), "point")).toBe(expected);
      expect(parseNumber(String(value).replace(".", ","), "comma")).toBe(expected);
    }),
  );
});

test("no text is read as a number that is not finite", () => {
  fc.assert(
    fc.property(fc.string(), fc.constantFrom("comma" as const, "point" as const), (text, decimal) => {
      const value = parseNumber(text, decimal);
      expect(value === undefined || Number.isFinite(value)).toBe(true);
    }),
  );
});

test.each(["", "  ", "-", "--", "–", "—", "\u2212", " - "])("%j is blank", (text) => {
  expect(isBlank(text)).toBe(true);
});

test.each(["0", "-1", "n/a", "."])("%j is not blank", (text) => {
  expect(isBlank(text)).toBe(false);
});
