import { describe, expect, test } from "vitest";
import { column, metricColumn, NOWHERE } from "../support/scoring-input.ts";
import { importTable, outline, type TableTest } from "./import-table.ts";

const face = column("Face", metricColumn("face-angle", "°", "right"));
const path = column("Path", metricColumn("club-path", "°", "right"));
const difference = column("F2P", metricColumn("face-to-path", "°", "right"));

function findings(rows: string, more: Partial<TableTest> = {}) {
  return importTable(`Face;Path;F2P\n${rows}`, { columns: [face, path, difference], ...more }).findings;
}

describe("a reading that also follows from others", () => {
  test("may differ by what was rounded away", () => {
    expect(findings("2.1;1.0;1.1\n2;1;1.9\n2.14;1.06;1.1\n;1;9\n")).toEqual([]);
  });

  test("is reported where it differs by more, and kept", () => {
    const found = findings("2.1;1.0;1.1\n2.1;1.0;3.1\n");
    expect(outline(found)).toEqual(["warning value-inconsistent line 3"]);
    expect(found[0]?.message).toBe(
      "face-to-path was read as 3.1° open, but face-angle − club-path gives 1.1° open: one of these readings, or the sign or unit of a column, is wrong. All are kept as they were read.",
    );
  });

  test("may differ by what the instrument does not resolve", () => {
    const of = (metric: string) => ({
      metric,
      random: 0.5 * (Math.PI / 180),
      systematic: 0,
      clubs: [],
      location: NOWHERE,
    });
    const instrument = { name: "Bay", uncertainties: [of("face-angle"), of("club-path")], location: NOWHERE };
    expect(findings("2.1;1.0;3.0\n", { instrument })).toEqual([]);
    expect(outline(findings("2.1;1.0;3.4\n", { instrument }))).toEqual(["warning value-inconsistent line 2"]);
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
