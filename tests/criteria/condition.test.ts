import { describe, expect, test } from "vitest";
import { meets, metricsIn, type Readings, writeCondition } from "../../language/criteria/condition.ts";
import { condition, metricCalled } from "./words.ts";

/** Readings in the unit each metric is shown in. */
function shot(readings: Record<string, number>): Readings {
  return inSI(
    Object.fromEntries(
      Object.entries(readings).map(([name, value]) => [name, value * metricCalled(name).unit.factor]),
    ),
  );
}

function inSI(values: Record<string, number>): Readings {
  return { values, categories: {}, club: null };
}

const rightHander = { hand: "right", level: null } as const;
const leftHander = { hand: "left", level: null } as const;

describe("a limit", () => {
  test.each([
    // condition, reading, right-hander, left-hander
    ["club-path within 2° of 1° in-to-out", 3, true, false],
    ["club-path within 2° of 1° in-to-out", -3, false, true],
    ["club-path between 1° out-to-in and 3° in-to-out", -1, true, true],
    ["club-path between 1° out-to-in and 3° in-to-out", 3, true, false],
    ["club-path at most 2° in-to-out", -9, true, false],
    ["club-path at least 2° out-to-in", -2, true, false],
    ["club-path at most 2° right", 2, true, true],
  ])("%s, read %d", (phrase, value, forRight, forLeft) => {
    expect(meets(condition(phrase), shot({ "club-path": value }), rightHander)).toBe(forRight);
    expect(meets(condition(phrase), shot({ "club-path": value }), leftHander)).toBe(forLeft);
  });

  test("a reading exactly at a limit is inside, in spite of binary fractions", () => {
    // 0.3 - 0.1 gives 0.19999999999999998
    expect(
      meets(condition("smash-factor at least 0.2"), inSI({ "smash-factor": 0.3 - 0.1 }), rightHander),
    ).toBe(true);
    expect(
      meets(condition("smash-factor at most 0.3"), inSI({ "smash-factor": 0.1 + 0.2 }), rightHander),
    ).toBe(true);
  });

  test("`below` and `above` leave the limit itself outside, in spite of binary fractions", () => {
    expect(meets(condition("smash-factor below 0.2"), inSI({ "smash-factor": 0.3 - 0.1 }), rightHander)).toBe(
      false,
    );
    expect(meets(condition("smash-factor above 0.3"), inSI({ "smash-factor": 0.1 + 0.2 }), rightHander)).toBe(
      false,
    );
    expect(meets(condition("smash-factor below 0.2"), inSI({ "smash-factor": 0.1999 }), rightHander)).toBe(
      true,
    );
    expect(meets(condition("smash-factor above 0.3"), inSI({ "smash-factor": 0.3001 }), rightHander)).toBe(
      true,
    );
  });
});

describe("what is unknown", () => {
  const both = condition("club-path within ±2°; carry at least 150 yd");
  const either = condition("club-path within ±2° | carry at least 150 yd");

  test("matters only where it could change the answer", () => {
    expect(meets(both, shot({ carry: 120 }), rightHander)).toBe(false);
    expect(meets(both, shot({ carry: 160 }), rightHander)).toBe(undefined);
    expect(meets(either, shot({ carry: 160 }), rightHander)).toBe(true);
    expect(meets(either, shot({ carry: 120 }), rightHander)).toBe(undefined);
  });

  test("a reading that is no number is unknown", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(meets(condition("carry at least 150 yd"), inSI({ carry: value }), rightHander)).toBe(undefined);
  });

  test("a metric called like something every object has is unknown too", () => {
    expect(meets(condition("constructor at least 1"), inSI({}), rightHander)).toBe(undefined);
  });
});

test("a condition in words", () => {
  const phrase = condition("club-path within ±2°; offline at most 10 yd left | smash-factor above 1.4");
  expect(writeCondition(phrase)).toBe(
    "club-path within ±2° and offline at most 10 yd left or smash-factor above 1.4",
  );
  expect(metricsIn(condition("carry at least 150 yd | carry below 120 yd; offline within ±5 yd"))).toEqual([
    "carry",
    "offline",
  ]);
});
