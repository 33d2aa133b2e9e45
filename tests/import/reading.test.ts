import { describe, expect, test } from "vitest";
import { type Notation, readCell } from "../../server/import/cells/reading.ts";
import { DIRECTIONS, METRICS, UNITS } from "../support/scoring-input.ts";

const directionsOf = (name: string) => METRICS.find((metric) => metric.name === name)?.directions ?? [];

const inMetres: Notation = {
  decimal: "point",
  thousands: null,
  unit: UNITS.m,
  positive: null,
  directions: [],
  sides: [],
  hand: "right",
};
const offline: Notation = { ...inMetres, positive: DIRECTIONS.left, directions: directionsOf("offline") };
/** Club path, in a unit worth one so that values show as they were written. */
const path: Notation = {
  ...inMetres,
  unit: { symbol: "°", factor: 1 },
  positive: DIRECTIONS["in-to-out"],
  directions: directionsOf("club-path"),
};

describe("a number alone", () => {
  test("is turned into SI", () => {
    expect(readCell("100", { ...inMetres, unit: UNITS.yd })).toBeCloseTo(91.44);
  });

  test("counts towards the side that the source calls positive", () => {
    expect(readCell("12", offline)).toBe(-12);
    expect(readCell("-12", offline)).toBe(12);
  });

  test("counts towards the other side for a left-hander, where the word mirrors with the hand", () => {
    expect(readCell("2", path)).toBe(2);
    expect(readCell("2", { ...path, hand: "left" })).toBe(-2);
    expect(readCell("12", { ...offline, hand: "left" })).toBe(-12);
  });

  test("is taken as written where the source names no side", () => {
    expect(readCell("-2", { ...path, positive: null, hand: "left" })).toBe(-2);
  });

  test("cannot be placed while the hand is not known and the word depends on it", () => {
    expect(readCell("2", { ...path, hand: null })).toBe("hand-missing");
    expect(readCell("12", { ...offline, hand: null })).toBe(-12);
  });
});

describe("a number with its unit", () => {
  test.each(["12 m", "12m", "12 M", "+12 m", "12.0  m"])("%j is twelve metres", (cell) => {
    expect(readCell(cell, inMetres)).toBe(12);
  });

  test.each(["2°", "2 °", "2º", "2 deg", "2 deg.", "2.0deg.", "2 degrees"])("%j is two degrees", (cell) => {
    expect(readCell(cell, path)).toBe(2);
  });

  test("is read in the plural, too", () => {
    expect(readCell("12 yds", { ...inMetres, unit: { symbol: "yd", factor: 1 } })).toBe(12);
  });

  test.each(["12 yd", "12 ft", "12 mm", "12 %", "12 m/s", "12°"])("%j is not read as metres", (cell) => {
    expect(readCell(cell, inMetres)).toBe("unreadable");
  });

  test("a share in percent is not read as a plain number", () => {
    expect(readCell("85 %", { ...inMetres, unit: UNITS["%"] })).toBeCloseTo(0.85);
    expect(readCell("85 %", { ...inMetres, unit: UNITS.one })).toBe("unreadable");
  });
});

describe("a number with a direction word", () => {
  test.each([
    ["12 right", 12],
    ["12 left", -12],
    ["12 L", -12],
    ["12L", -12],
    ["R 12", 12],
    ["12 m left", -12],
    ["12 M LEFT", -12],
    ["0 left", 0],
  ])("%j is %d metres to the right, whatever the source calls positive", (cell, value) => {
    expect(readCell(cell, offline)).toBe(value);
  });

  test.each([
    ["2.5° in-to-out", 2.5],
    ["2.5 in to out", 2.5],
    ["2.5°R", 2.5],
    ["2.5° out", -2.5],
  ])("%j is a club path of %d° for a right-hander", (cell, value) => {
    expect(readCell(cell, path)).toBe(value);
  });

  test("follows the hand where the word does", () => {
    expect(readCell("2.5 in-to-out", { ...path, hand: "left" })).toBe(-2.5);
    expect(readCell("2.5 right", { ...path, hand: "left" })).toBe(2.5);
    expect(readCell("2.5 in-to-out", { ...path, positive: null, hand: null })).toBe("hand-missing");
  });

  test.each(["-12 left", "L 12 L", "12 up", "12 x", "left", "left 12 right", "12 left of it"])(
    "%j is not read",
    (cell) => {
      expect(readCell(cell, offline)).toBe("unreadable");
    },
  );

  test("a cut that could mean either side is not read", () => {
    const sides = {
      ...offline,
      directions: [DIRECTIONS.open, { word: "off", sign: -1, handed: false } as const],
    };
    expect(readCell("3 o", sides)).toBe("unreadable");
    expect(readCell("3 op", sides)).toBe(3);
  });
});

test.each(["", " ", "-", "—"])("%j means that nothing was measured", (cell) => {
  expect(readCell(cell, offline)).toBe("blank");
});

test.each(["NaN", "Infinity", "n/a", "error", "#DIV/0!", "=1+1", "1 2", "3 m (10 ft)", "10:42", "m 3"])(
  "%j is not read",
  (cell) => {
    expect(readCell(cell, inMetres)).toBe("unreadable");
  },
);

describe("a minus that is not in front of the number", () => {
  const right: Notation = { ...offline, positive: DIRECTIONS.right };
  const minus = { ...right, sides: ["()", "-"].map((text) => ({ text, direction: DIRECTIONS.left })) };

  test.each(["(1.2)", "( 1.2 )", "(1.2 m)", "1.2-", "1.2 -", "1.2−", "1.2 m -"])(
    "%j is read where the source says which side it means",
    (cell) => {
      expect(readCell(cell, minus)).toBe(-1.2);
      expect(readCell(cell, right)).toBe("unreadable");
    },
  );

  test.each(["(-1.2)", "-(1.2)", "-1.2-", "(1.2)-", "(1.2 L)", "((1.2))", "(1.2", "1.2)", "(1) (2)"])(
    "%j is none",
    (cell) => {
      expect(readCell(cell, minus)).toBe("unreadable");
    },
  );
});
