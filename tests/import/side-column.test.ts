/** Amounts whose sides stand in a column of their own. */
import { expect, test } from "vitest";
import type { Column } from "../../shared/plan-model.ts";
import { column, DIRECTIONS, metricColumn, UNITS } from "../support/scoring-input.ts";
import { importTable, outline, readings } from "./import-table.ts";

const { left, right } = DIRECTIONS;

/** `column "Miss" is offline in m sides in "Dir"`, with what is stated besides. */
function miss(stated: Partial<Extract<Column["content"], { kind: "metric" }>> = {}): Column {
  const content = { kind: "metric", metric: "offline", unit: UNITS.m, positive: null, sides: [] } as const;
  return column("Miss", { ...content, sidesIn: "Dir", ...stated, sides: [...(stated.sides ?? [])] });
}

test("an amount is on the side that the other column names", () => {
  const data = importTable("Dir,Carry,Miss\nL,150,3.5\nright,151,2 m\nl,152,1\n", {
    columns: [miss(), column("Carry", metricColumn("carry", "m"))],
  });
  expect(readings(data, "offline")).toEqual([-3.5, 2, -1]);
  expect(data.findings).toEqual([]);
});

test("texts that the source explains are sides there, too", () => {
  const sides = [
    { text: "links", direction: left },
    { text: "rechts", direction: right },
  ];
  const data = importTable("Miss;Dir\n3,5;rechts\n2,5;Links\n", {
    columns: [miss({ sides })],
    source: { decimal: "comma" },
  });
  expect(readings(data, "offline")).toEqual([3.5, -2.5]);
});

test("zero needs no side; what has none, or an unknown one, or a sign as well, is unknown", () => {
  const data = importTable("Miss,Dir\n0,\n0.0,centre\n3,\n3,?\n-3,L\n,L\n", { columns: [miss()] });
  expect(readings(data, "offline")).toEqual([0, 0, undefined, undefined, undefined, undefined]);
  expect(outline(data.findings)).toEqual([
    "warning cell-unreadable line 4 Miss",
    "warning cell-unreadable line 5 Miss",
    "warning cell-unreadable line 6 Miss",
  ]);
  expect(data.findings[0]?.message).toBe(
    '"3" in column "Miss" has no side in column "Dir"; the reading is left unknown.',
  );
});

test("a column of sides that is not there is an error", () => {
  const data = importTable("Miss,Carry\n3,150\n", { columns: [miss()] });
  expect(outline(data.findings)).toEqual(["error column-missing line 1 Dir"]);
});
