import { describe, expect, test } from "vitest";
import { column, metricColumn } from "../support/scoring-input.ts";
import { expectBothShots, importTable, outline, readings } from "./import-table.ts";

const columns = [
  column("club.path", metricColumn("club-path", "°", "right")),
  column("carry", metricColumn("carry", "m")),
];
const DEGREE = Math.PI / 180;

describe("JSON is a table whose columns are its keys", () => {
  test.each([
    ["an array", '[{"club": {"path": -1.5}, "carry": 150},\n{"carry": 151.25, "club": {"path": 2}}]', [1, 2]],
    ["lines", '{"club": {"path": -1.5}, "carry": 150}\n{"carry": 151.25, "club": {"path": 2}}\n', [1, 2]],
    [
      "an object around an array",
      '{"day": "Monday", "data": {"shots": [\n{"club": {"path": -1.5}, "carry": 150},\n{"carry": 151.25, "club": {"path": 2}}]}}',
      [2, 3],
    ],
    ["a key with a point", '[{"club.path": -1.5, "carry": 150},\n{"carry": 151.25, "club.path": 2}]', [1, 2]],
  ])("%s", (_, text, lines) => {
    expectBothShots(importTable(text, { columns }), lines);
  });

  test.each([
    ["lists", '{"club": {"path": [-1.5, 2]}, "carry": [150, 151.25]}', [1, 1]],
    ["lists on lines", '{\n"by": "P-01", "club.path": [\n-1.5,\n2\n], "carry": [150,\n151.25]}\n', [3, 4]],
    ["rows by number", '{"club.path": {"0": -1.5, "1": 2}, "carry": {"0": 150, "1": 151.25}}', [1, 1]],
    [
      "an object around lists",
      '{"day": 3, "shots": {"carry": [150, 151.25], "club": {"path": [-1.5, 2]}}}',
      [1, 1],
    ],
  ])("columns: %s", (_, text, lines) => {
    expectBothShots(importTable(text, { columns }), lines);
  });

  test("columns that are not equally long, or not of the same rows, are one error", () => {
    const message = (text: string) =>
      importTable(text, { columns }).findings.map((finding) => finding.message);
    expect(message('{"club.path": [1, 2, 3], "carry": [150, 151]}')).toEqual([
      "This looks like JSON, but its lists are not equally long, or not of the same rows (club.path 3, carry 2), so which readings belong together cannot be told. Expected is an array of objects, one object on each line, or one with a list of readings for each column.",
    ]);
    expect(message('{"club.path": {"0": 1, "1": 2}, "carry": {"1": 150, "2": 151}}')).toHaveLength(1);
  });

  test("a shot with a series of numbers is one shot, and so is each on its line", () => {
    const shot = '{"club": {"path": 1}, "carry": 150, "heights": [0, 12, 20, 14]}';
    expect(readings(importTable(shot, { columns }), "carry")).toEqual([150]);
    const lines = '{"club.path": "1", "carry": "150", "x": [1, 2], "y": [2, 3]}\n'.repeat(2);
    expect(readings(importTable(lines, { columns }), "carry")).toEqual([150, 150]);
  });

  test("a list in which nothing was measured is no reading", () => {
    const data = importTable('{"club.path": [1, null, 2], "carry": [null, 151, "-"]}', { columns });
    expect(readings(data, "carry")).toEqual([undefined, 151, undefined]);
    expect(data.findings).toEqual([]);
  });

  test("numbers are numbers whatever decimal mark the source states for texts", () => {
    const data = importTable('[{"carry": 150.5, "club": {"path": "1,5"}}]', {
      columns,
      source: { decimal: "comma" },
    });
    expect(readings(data, "carry")).toEqual([150.5]);
    expect(readings(data, "club-path", DEGREE)).toEqual([1.5]);
  });

  test("null, a missing key and a key that comes later are no readings", () => {
    const data = importTable(
      '[{"carry": null, "note": "topped"}, {"carry": 151}, {"club": {"path": 1}, "carry": 152}]',
      {
        columns,
      },
    );
    expect(readings(data, "carry")).toEqual([undefined, 151, 152]);
    expect(data.findings).toEqual([]);
  });

  test("a line that is no object is one finding, and the others are read", () => {
    const data = importTable('{"carry": 150, "club": {"path": 1}}\n{"carry": 15\n7\n{"carry": 151}\n', {
      columns,
    });
    expect(readings(data, "carry")).toEqual([150, 151]);
    expect(outline(data.findings)).toEqual([
      "warning row-unreadable line 2",
      "warning row-unreadable line 3",
    ]);
  });

  test.each([
    ["an array that does not end inside a shot", '[{"carry": 150, "club": {"path": 1}}, {"carry": 15'],
    ["an object that does not end", '{"shots": [{"carry": 150}'],
  ])("%s is one error", (_, text) => {
    const data = importTable(text, { columns });
    expect(data.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["file-unreadable", "error"],
    ]);
    expect(data.shots).toEqual([]);
  });

  test("a key the source reads that no shot has is one error", () => {
    const data = importTable('[{"carry": 150}]', { columns });
    expect(outline(data.findings)).toEqual(["error column-missing line 1 club.path"]);
  });
});
