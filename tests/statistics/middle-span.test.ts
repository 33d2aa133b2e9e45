import fc from "fast-check";
import { expect, test } from "vitest";
import { middleSpan, middleSpanLimits } from "../../shared/statistics/middle-span.ts";
import { percentileRanks } from "../../shared/statistics/percentile.ts";
import { shotsFrom } from "./samples.ts";

test("the middle 80 % of eleven shots leaves one off each end", () => {
  const offline = [-9, -4, -3, -2, -1, 0, 1, 2, 3, 4, 12];
  expect(middleSpan(offline, 0.8)).toBe(8);
  expect(middleSpan(offline, 1)).toBe(21);
  expect(middleSpan(offline, 0)).toBe(0);
});

test("no shots, or a share that is none, have no span", () => {
  expect(middleSpan([], 0.8)).toBeUndefined();
  expect(middleSpan([1, 2], 1.2)).toBeUndefined();
  expect(middleSpan([1, 2], -0.2)).toBeUndefined();
});

test("the limits are differences of order statistics at half the error each", () => {
  const values = Array.from({ length: 40 }, (_, index) => index + 1);
  const { low, high } = percentileRanks(40, 0.9, 0.9);
  expect([low?.rank, high?.rank]).toEqual([34, 39]);
  expect(middleSpanLimits(values, 0.8, 0.8)).toEqual({ low: 34 - 7, high: 39 - 2 });
});

test("few shots bound a wide span from below only, very few not at all", () => {
  const values = Array.from({ length: 12 }, (_, index) => index + 1);
  expect(middleSpanLimits(values, 0.8, 0.8)).toMatchObject({ high: Number.POSITIVE_INFINITY });
  expect(middleSpanLimits(values.slice(0, 2), 0.8, 0.8)).toBeUndefined();
  expect(middleSpanLimits([], 0.8, 0.8)).toBeUndefined();
  expect(middleSpanLimits(values, 0.8, 1)).toBeUndefined();
});

test("the limits keep their promise: the true span of a known law is outside no more often than allowed", () => {
  const trueSpan = 0.8; // of shots spread evenly from 0 to 1
  const tries = 4000;
  const outside = { below: 0, above: 0 };
  const shots = shotsFrom(7);
  for (let trial = 0; trial < tries; trial++) {
    const limits = middleSpanLimits(Array.from({ length: 35 }, shots.even), 0.8, 0.8);
    if (limits === undefined) throw new Error("35 shots have limits.");
    if (limits.low > trueSpan) outside.below++;
    if (limits.high < trueSpan) outside.above++;
  }
  expect(outside.below / tries).toBeLessThan(0.2);
  expect(outside.above / tries).toBeLessThan(0.2);
  expect(outside.above).toBeGreaterThan(0);
});

test("the span that is seen lies within its limits", () => {
  const values = fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 30, maxLength: 60 });
  fc.assert(
    fc.property(values, fc.constantFrom(0.5, 0.6, 0.8), (list, share) => {
      const limits = middleSpanLimits(list, share, 0.8);
      const span = middleSpan(list, share) ?? Number.NaN;
      expect(limits?.low).toBeLessThanOrEqual(span);
      expect(limits?.high).toBeGreaterThanOrEqual(span);
    }),
  );
});
