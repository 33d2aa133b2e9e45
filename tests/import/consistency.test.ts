import { describe, expect, test } from "vitest";
import { disagreements } from "../../server/import/derive/consistency.ts";
import type { Expression, Instrument } from "../../shared/plan-model.ts";
import { column, metricColumn, NOWHERE } from "../support/scoring-input.ts";
import { importTable, outline, type TableTest } from "./import-table.ts";

const face = column("Face", metricColumn("face-angle", "°", "right"));
const path = column("Path", metricColumn("club-path", "°", "right"));
const difference = column("F2P", metricColumn("face-to-path", "°", "right"));

function findings(rows: string, more: Partial<TableTest> = {}) {
  return importTable(`Face;Path;F2P\n${rows}`, { columns: [face, path, difference], ...more }).findings;
}

/** An instrument whose readings of face and path may be off by so many degrees. */
function offBy(random: number, systematic: number, clubs: string[] = []): Instrument {
  const DEGREE = Math.PI / 180;
  const of = (metric: string) => ({
    metric,
    random: random * DEGREE,
    systematic: systematic * DEGREE,
    clubs,
    location: NOWHERE,
  });
  return { name: "Bay", uncertainties: [of("face-angle"), of("club-path")], location: NOWHERE };
}

describe("a reading that also follows from others", () => {
  test("may differ by what was rounded away", () => {
    expect(findings("2.1;1.0;1.1\n2;1;1.9\n2.14;1.06;1.1\n2;;9\n;1;9\n")).toEqual([]);
  });

  test("is reported where it differs by more, and kept", () => {
    const found = findings("2.1;1.0;1.1\n2.1;1.0;3.1\n");
    expect(outline(found)).toEqual(["warning value-inconsistent line 3"]);
    expect(found[0]?.message).toBe(
      "face-to-path was read as 3.1° open, but face-angle − club-path gives 1.1° open: one of these readings, or the sign or unit of a column, is wrong. All are kept as they were read.",
    );
  });

  test("may differ by what the instrument does not resolve", () => {
    expect(findings("2.1;1.0;3.0\n", { instrument: offBy(0.5, 0) })).toEqual([]);
    expect(outline(findings("2.1;1.0;3.4\n", { instrument: offBy(0.5, 0) }))).toEqual([
      "warning value-inconsistent line 2",
    ]);
    // Twice √(0.3² + 0.4²) of both is 2, with 0.15 for the three roundings.
    expect(findings("2.1;1.0;3.2\n", { instrument: offBy(0.3, 0.4) })).toEqual([]);
    expect(outline(findings("2.1;1.0;3.3\n", { instrument: offBy(0.3, 0.4) }))).toEqual([
      "warning value-inconsistent line 2",
    ]);
  });

  test("has nothing to do with what the instrument does not resolve with other clubs", () => {
    const rows = (club: string) => `Face;Path;F2P;Club\n2.1;1.0;3.0;${club}\n`;
    const columns = [face, path, difference, column("Club", { kind: "club", spellings: [] })];
    const instrument = offBy(0.5, 0, ["driver"]);
    expect(importTable(rows("driver"), { columns, instrument }).findings).toEqual([]);
    for (const club of ["7-iron", ""]) {
      const { findings } = importTable(rows(club), { columns, instrument });
      expect(outline(findings)).toContain("warning value-inconsistent line 2");
    }
  });

  test("is not compared where the formula has no value", () => {
    const columns = [
      column("Club", metricColumn("club-speed", "m/s")),
      column("Ball", metricColumn("ball-speed", "m/s")),
      column("Smash", metricColumn("smash-factor", "one")),
    ];
    expect(importTable("Club;Ball;Smash\n0;50;1.4\n40;56;1.40\n", { columns }).findings).toEqual([]);
    expect(outline(importTable("Club;Ball;Smash\n40;56;1.50\n", { columns }).findings)).toEqual([
      "warning value-inconsistent line 2",
    ]);
  });
});

describe("a result lies between the least and the most that its parts allow", () => {
  // The ranges are worked out by hand from the corners.
  test.each([
    ["6 ± 1", "+", "2 ± 0.5", 6.5, 9.5],
    ["6 ± 1", "-", "2 ± 0.5", 2.5, 5.5],
    ["6 ± 1", "*", "2 ± 0.5", 7.5, 17.5],
    ["6 ± 1", "*", "-2 ± 0.5", -17.5, -7.5],
    ["1 ± 2", "*", "-1 ± 3", -12, 6],
    ["6 ± 1", "/", "2 ± 0.5", 2, 14 / 3],
    ["6 ± 1", "/", "0.5 ± 0.1", 25 / 3, 17.5],
    ["6 ± 1", "/", "-0.5 ± 0.1", -17.5, -25 / 3],
    ["-1 ± 2", "/", "0.5 ± 0.1", -7.5, 2.5],
  ] as const)("%s %s %s", (left, operator, right, low, high) => {
    const [a = "", offA = ""] = left.split(" ± ");
    const [b = "", offB = ""] = right.split(" ± ");
    const fits = (c: number) => {
      const measured = { a: Number(a), b: Number(b), c };
      return disagreements(measured, { a: Number(offA), b: Number(offB) }, [
        { name: "c", expression: { kind: "operation", operator, left: named("a"), right: named("b") } },
      ]);
    };
    for (const inside of [low, high, (low + high) / 2]) expect(fits(inside)).toEqual([]);
    for (const outside of [low - 0.001, high + 0.001]) {
      expect(fits(outside)).toMatchObject([{ measured: outside, derived: (low + high) / 2 }]);
    }
  });

  test("of exact parts it is exact", () => {
    const expression = { kind: "operation", operator: "-", left: named("a"), right: named("b") } as const;
    const found = (c: number) => disagreements({ a: 6, b: 2, c }, {}, [{ name: "c", expression }]).length;
    expect([found(4), found(4.001), found(3.999)]).toEqual([0, 1, 1]);
  });

  test.each(["0 ± 0", "1 ± 1", "-1 ± 1", "1 ± 2", "0.1 ± 0.3", "-0.1 ± 0.3"])(
    "but a quotient by %s may be anything",
    (by) => {
      const [b = "", off = ""] = by.split(" ± ");
      const expression = { kind: "operation", operator: "/", left: named("a"), right: named("b") } as const;
      const margins = { b: Number(off) };
      expect(disagreements({ a: 6, b: Number(b), c: 1e9 }, margins, [{ name: "c", expression }])).toEqual([]);
    },
  );
});

function named(name: string): Expression {
  return { kind: "metric", name };
}
