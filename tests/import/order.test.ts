import { describe, expect, test } from "vitest";
import { moment, timeOfDay } from "../../server/import/cells/moment.ts";
import { column, metricColumn } from "../support/scoring-input.ts";
import { importTable, outline } from "./import-table.ts";

const columns = [column("Carry", metricColumn("carry", "m"))];

/** The order in which shots with these cells were hit, as places in the table from 1, and the findings. */
function orderOf(...cells: string[]): [number[], string[]] {
  const text = `When;Carry\n${cells.map((cell) => `${cell};150\n`).join("")}`;
  const { shots, findings } = importTable(text, { columns, source: { orderedBy: "When" } });
  return [shots.map(({ row }) => row.line - 1), outline(findings)];
}

describe("shots stand in the order", () => {
  test("of their rows where the source names no column", () => {
    const { shots } = importTable("When;Carry\n2;150\n1;151\n", { columns });
    expect(shots.map(({ row }) => row.line)).toEqual([2, 3]);
  });

  test.each([
    ["of numbers", ["10", "9", "-1", "1,000"], [3, 2, 1, 4]],
    ["of times of day", ["10:42", "9:58", "9:58:07.25", "9:58:07.3"], [2, 3, 4, 1]],
    ["of times before and after noon", ["1:05 PM", "12:59 pm", "11:00 AM", "12:10 a.m."], [4, 3, 2, 1]],
    ["of dates with a time", ["2026-10-12T10:42:00Z", "2026-10-12T09:00:00Z", "2026-09-30 23:59"], [3, 2, 1]],
    ["of times in different zones", ["2026-10-12T10:00+02:00", "2026-10-12T09:00Z"], [1, 2]],
    ["of dates with dots", ["12.10.2026 10:42", "2.10.2026 11:00"], [2, 1]],
    ["of dates with slashes", ["10/12/2026 1:05 PM", "10/12/2026 12:59 PM", "9/30/2026 6:00 PM"], [3, 2, 1]],
    ["of text, numbers in it by size", ["shot 10", "Shot 9", "shot 2b", "shot 2a"], [4, 3, 2, 1]],
  ])("%s", (_, cells, places) => {
    expect(orderOf(...cells)).toEqual([places, []]);
  });

  test("of text where few cells are numbers", () => {
    expect(orderOf("b", "a", "3")).toEqual([[3, 2, 1], []]);
  });

  test("of the rows where they are equal", () => {
    expect(orderOf("2", "1", "2", "1")).toEqual([[2, 4, 1, 3], []]);
  });

  test("of the row above where there is nothing to go by", () => {
    expect(orderOf("", "3", "", "1", "-")).toEqual([[1, 4, 5, 2, 3], []]);
    expect(orderOf("", "", "-", "3", "1")).toEqual([[1, 2, 3, 5, 4], []]);
  });

  test("of the row above where a cell is not like the others, which is reported", () => {
    expect(orderOf("3", "x", "1", "2")).toEqual([[3, 4, 1, 2], ["warning cell-unreadable line 3 When"]]);
  });
});

test.each(["24:00", "10:60", "13:00 PM", "10", "10:4", ""])("%j is no time of day", (text) => {
  expect(timeOfDay(text)).toBeUndefined();
});

test.each(["2026-13-01 10:00", "2026-00-01 10:00", "2026-10-12", "13/13/2026 10:00", "2026-10-12 25:00"])(
  "%j is no date with a time",
  (text) => {
    expect(moment(text)).toBeUndefined();
  },
);

test("a first number that cannot be a month is a day", () => {
  expect(moment("13/10/2026 10:00")).toBe(moment("2026-10-13T10:00Z"));
  expect(moment("10/13/2026 10:00")).toBe(moment("2026-10-13T10:00Z"));
});
