import { expect, test } from "vitest";
import { looksNormal } from "../../shared/statistics/looks-normal.ts";
import { shotsFrom } from "./samples.ts";

test("normal ones do nine times in ten; with one in ten at three times the spread, fifty hardly do", () => {
  const { normal, even } = shotsFrom(23);
  const share = (shot: () => number, n: number) => {
    const seen = Array.from({ length: 1500 }, () => looksNormal(Array.from({ length: n }, shot)));
    return seen.filter(Boolean).length / seen.length;
  };
  const wild = () => normal() * (even() < 0.1 ? 3 : 1);
  for (const n of [5, 10, 30]) {
    expect(share(normal, n)).toBeGreaterThan(0.86);
    expect(share(normal, n)).toBeLessThan(0.93);
  }
  expect(share(wild, 10)).toBeLessThan(0.8);
  expect(share(wild, 50)).toBeLessThan(0.4);
});

test("four shots, or equal ones, cannot be told", () => {
  expect(looksNormal([1, 2, 3, 9])).toBeUndefined();
  expect(looksNormal(Array<number>(8).fill(2))).toBeUndefined();
  expect(looksNormal([1, 2, 3, 4, 5])).toBe(true);
  expect(looksNormal([1, 2, 3, 4, 100])).toBe(false);
});
