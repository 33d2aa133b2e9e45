import { describe, expect, test } from "vitest";
import { formatAmount, formatRange, formatReading, writeBounds } from "../../shared/quantity.ts";
import { bounds, metricCalled } from "../criteria/words.ts";

describe("bounds", () => {
  test.each([
    "within ±2°",
    "within 5 yd",
    "within 2° of 1° in-to-out",
    "within ±2° of 1° in-to-out",
    "between 6° down and 2° down",
    "at most 2.5°",
    "above 140 yd",
  ])("are shown as they were written: %s", (written) => {
    expect(writeBounds(bounds(written))).toBe(written);
  });
});

test("halves go away from zero, even where binary fractions fall short of them", () => {
  const path = metricCalled("club-path");
  const tenths = Array.from({ length: 40 }, (_, index) => index);
  const shown = tenths.map((tenth) => formatAmount(((tenth + 0.5) / 10) * path.unit.factor, path));
  expect(shown).toEqual(tenths.map((tenth) => `${((tenth + 1) / 10).toFixed(1)}°`));
  const one = (0.1 + 0.2 - 0.05) * path.unit.factor;
  const other = (0.2 - 0.05 + 0.1) * path.unit.factor;
  expect(one).not.toBe(other);
  expect(formatReading(-one, path, "right")).toBe(formatReading(-other, path, "right"));
});

describe("a range of readings", () => {
  const range = (low: number, high: number, name: string, hand: "right" | "left" = "right") => {
    const metric = metricCalled(name);
    return formatRange(low * metric.unit.factor, high * metric.unit.factor, metric, hand);
  };

  test.each([
    ["club-path", 1.6, 2.4, "1.6° to 2.4° in-to-out"],
    ["club-path", -2.4, -1.6, "1.6° to 2.4° out-to-in"],
    ["club-path", -0.6, 1.2, "0.6° out-to-in to 1.2° in-to-out"],
    ["attack-angle", 0.5, 1.3, "0.5° to 1.3° up"],
    ["carry", 146, 154, "146 yd to 154 yd"],
    ["smash-factor", 1.39, 1.41, "1.39 to 1.41"],
  ])("%s from %d to %d: %s", (name, low, high, text) => {
    expect(range(low, high, name)).toBe(text);
  });

  test("that reaches no further than zero, as it is shown, has one side", () => {
    expect(range(-0.6, 0.04, "club-path")).toBe("0.0° to 0.6° out-to-in");
    expect(range(-0.04, 0.6, "club-path")).toBe("0.0° to 0.6° in-to-out");
    expect(range(-0.04, 0.04, "club-path")).toBe("0.0° to 0.0°");
  });

  test("has the words of the player's hand", () => {
    expect(range(1.6, 2.4, "club-path", "left")).toBe("1.6° to 2.4° out-to-in");
    expect(range(-0.6, 1.2, "club-path", "left")).toBe("0.6° in-to-out to 1.2° out-to-in");
  });
});
