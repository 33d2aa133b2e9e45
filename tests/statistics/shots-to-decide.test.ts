import { expect, test } from "vitest";
import {
  fewestThatDecide,
  firstThatDecides,
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
