import { expect, test } from "vitest";
import {
  isAbove,
  isAtLeast,
  isAtMost,
  isBelow,
  isInside,
  liesOutside,
  liesWithin,
  slackOf,
} from "../../shared/statistics/interval.ts";

const slack = slackOf(1);

test("exactly at the limit counts as inside, whatever binary rounding did", () => {
  expect(0.3 - 0.1 >= 0.2).toBe(false); // the trap
  expect(isAtLeast(0.3 - 0.1, 0.2, slack)).toBe(true);
  expect(isBelow(0.3 - 0.1, 0.2, slack)).toBe(false);
  expect(isAtMost(0.1 + 0.2, 0.3, slack)).toBe(true);
  expect(isAbove(0.1 + 0.2, 0.3, slack)).toBe(false);
  expect(isInside(0.1 + 0.2, { low: 0.1, high: 0.3 }, slack)).toBe(true);
});

test("a difference a display could show is a difference", () => {
  expect(isAtLeast(1.9999, 2, slack)).toBe(false);
  expect(isBelow(1.9999, 2, slack)).toBe(true);
  expect(isAbove(2.0001, 2, slack)).toBe(true);
});

test("the slack follows the unit of the limit", () => {
  const degree = Math.PI / 180;
  expect(isAtMost(2.0000001 * degree, 2 * degree, slackOf(degree))).toBe(false);
  expect(isAtMost(2.0000000001 * degree, 2 * degree, slackOf(degree))).toBe(true);
});

test("no limit on a side", () => {
  const above2 = { low: 2, high: Number.POSITIVE_INFINITY };
  expect(isInside(1e9, above2, slack)).toBe(true);
  expect(isInside(1, above2, slack)).toBe(false);
});

test("intervals within and outside each other", () => {
  const claim = { low: -1, high: 1 };
  expect(liesWithin({ low: -1, high: 0.1 + 0.9 }, claim, slack)).toBe(true);
  expect(liesWithin({ low: -0.5, high: 1.1 }, claim, slack)).toBe(false);
  expect(liesOutside({ low: 1.1, high: 2 }, claim, slack)).toBe(true);
  expect(liesOutside({ low: -3, high: -1 }, claim, slack)).toBe(false); // they touch
});

test("about a NaN nothing is true", () => {
  for (const states of [isAtLeast, isAtMost, isBelow, isAbove]) {
    expect(states(Number.NaN, 0, slack)).toBe(false);
    expect(states(0, Number.NaN, slack)).toBe(false);
  }
});
