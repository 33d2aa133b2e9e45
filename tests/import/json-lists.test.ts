/** JSON in which a shot is a list, and the names stand once. */
import { expect, test } from "vitest";
import { column, metricColumn } from "../support/scoring-input.ts";
import { expectBothShots, importTable } from "./import-table.ts";

const columns = [
  column("Path", metricColumn("club-path", "°", "right")),
  column("Carry", metricColumn("carry", "m")),
];

test.each([
  ["the first list names the columns", '[["Path", "Carry"],\n[-1.5, 150],\n[2, 151.25]]', [2, 3]],
  ["names beside the lists", '{"columns": ["Path", "Carry"],\n"data": [[-1.5, 150], [2, 151.25]]}', [2, 2]],
  [
    "names beside the lists, further in",
    '{"hall": 2, "shots": {"header": ["Path", "Carry"], "days": [1],\n"rows": [[-1.5, 150],\n[2, 151.25]]}}',
    [2, 3],
  ],
  [
    "an object around lists of which the first names",
    '{"shots": [["Path", "Carry"], [-1.5, 150], [2, 151.25]]}',
    [1, 1],
  ],
])("%s", (_, text, lines) => {
  expectBothShots(importTable(text, { columns }), lines);
});

test("a list that ends early leaves readings unknown, one that is too long is no shot", () => {
  const data = importTable('[["Path", "Carry"],\n[-1.5],\n[null, 151],\n[1, 2, 3]]', { columns });
  expect(data.shots.map(({ values }) => [values["club-path"] === undefined, values.carry])).toEqual([
    [false, undefined],
    [true, 151],
  ]);
  expect(data.findings).toMatchObject([{ code: "row-unreadable", line: 4, text: "[1, 2, 3]" }]);
});

test("two columns of one name are told apart from none", () => {
  const data = importTable('[["Path", "Carry", "Carry"], [1, 150, 160]]', { columns });
  expect(data.findings).toMatchObject([{ code: "column-ambiguous", column: "Carry" }]);
});

test("lists that nothing names are one error", () => {
  const { shots, findings } = importTable("[[1, 2], [3, 4]]", { columns });
  expect(shots).toEqual([]);
  expect(findings).toMatchObject([
    { code: "file-unreadable", message: expect.stringContaining("nothing names what stands in its lists") },
  ]);
});
