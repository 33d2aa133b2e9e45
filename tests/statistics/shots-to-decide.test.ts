import { expect, test } from "vitest";
import { middleSpanLimits } from "../../shared/statistics/middle-span.ts";
import {
  fewestThatDecide,
  firstThatDecides,
  firstThatDecidesEvenOrOdd,
  newShotsThatDecide,
} from "../../shared/statistics/shots-to-decide.ts";
import { spreadRatioLimits } from "../../shared/statistics/spread-change.ts";

test("one after the other, or by halving, the first number that decides is found", () => {
  for (const first of [5, 6, 17, 40]) {
    const decides = (shots: number) => shots >= first;
    expect(fewestThatDecide(5, 40, decides)).toBe(first);
    expect(firstThatDecides(5, 40, decides)).toBe(first);
  }
  expect(fewestThatDecide(5, 40, (shots) => shots > 40)).toBeUndefined();
  expect(firstThatDecides(5, 40, (shots) => shots > 40)).toBeUndefined();
});

test("what decides with every second shot is found among even and odd numbers", () => {
  for (const [even, odd] of [
    [6, 9],
    [12, 7],
    [40, 39],
    [6, 41],
  ] as const) {
    const decides = (shots: number) => shots >= (shots % 2 === 0 ? even : odd);
    for (const from of [5, 6]) {
      expect(firstThatDecidesEvenOrOdd(from, 40, decides)).toBe(fewestThatDecide(from, 40, decides));
    }
  }
  expect(firstThatDecidesEvenOrOdd(5, 40, (shots) => shots > 40)).toBeUndefined();
  let looked = 0;
  firstThatDecidesEvenOrOdd(2, 1000, (shots) => ++looked > 0 && shots >= 777);
  expect(looked).toBeLessThan(24);
});

test("some shots show a span of at least so much from the number on that is found, which halving may miss", () => {
  let missed = 0;
  for (const share of [0.05, 0.2, 0.3, 0.5, 0.8, 0.9]) {
    for (const confidence of [0.5, 0.6, 0.75, 0.8, 0.9, 0.95]) {
      const isShown = (shots: number) =>
        Array.from({ length: shots }, (_, alike) => alike + 1).some((alike) => {
          const values = Array.from({ length: shots }, (_, place) => (place < alike ? 0 : 1));
          return (middleSpanLimits(values, share, confidence)?.low ?? 0) > 0;
        });
      const fewest = fewestThatDecide(2, 60, isShown);
      expect(firstThatDecidesEvenOrOdd(2, 60, isShown), `${share} ${confidence}`).toBe(fewest);
      if (firstThatDecides(2, 60, isShown) !== fewest) missed++;
    }
  }
  expect(missed).toBeGreaterThan(0);
});

test("a cap below the shots hit asks for those alone", () => {
  expect(fewestThatDecide(50, 40, () => true)).toBe(50);
  expect(firstThatDecides(50, 40, () => true)).toBe(50);
});

test("halving looks at few numbers", () => {
  let looked = 0;
  firstThatDecides(2, 1000, (shots) => ++looked > 0 && shots >= 777);
  expect(looked).toBeLessThan(13);
});

test("a spread against a baseline that is too short is never decided", () => {
  const decides = (baseline: number, shots: number) => {
    const limits = spreadRatioLimits({ n: baseline, sd: 6 }, { n: shots, sd: 4.5 }, 0.8);
    return limits !== undefined && limits.high <= 0.9;
  };
  const against = (baseline: number) => newShotsThatDecide(10, 1000, (shots) => decides(baseline, shots));
  expect(against(30)).toBe(22);
  expect([decides(30, 21), decides(30, 22)]).toEqual([false, true]);
  expect(against(6)).toBe("never");
  expect(newShotsThatDecide(10, 1000, (shots) => shots > 5000)).toBeUndefined();
});
