/** One table of several players, days and sessions: a session takes its own rows. */
import { describe, expect, test } from "vitest";
import type { Column } from "../../shared/plan-model.ts";
import { column, metricColumn } from "../support/scoring-input.ts";
import { importTable, outline, readings } from "./import-table.ts";

const carry = column("Carry", metricColumn("carry", "m"));
const who = column("Who", { kind: "player", spellings: [{ text: "K. Moor", player: "P-01" }] });
const day = (order: "day-month-year" | "month-day-year" | null = null): Column =>
  column("Day", { kind: "date", order });

describe("by player", () => {
  const data = (...names: string[]) =>
    importTable(`Who;Carry\n${names.map((name, place) => `${name};${150 + place}\n`).join("")}`, {
      columns: [who, carry],
    });

  test("rows of other players are left alone, and counted", () => {
    const read = data("K. Moor", "P-07", "p 1", "P-01", "k moor");
    expect(readings(read, "carry")).toEqual([150, 152, 153, 154]);
    expect(read.files[0]).toMatchObject({ shots: 4, others: 1 });
    expect(read.findings).toEqual([]);
  });

  test("a row that names nobody is nobody's, and is reported", () => {
    const read = data("P-01", "", "-", "P-07");
    expect(readings(read, "carry")).toEqual([150]);
    expect(outline(read.findings)).toEqual([
      "warning row-skipped line 3 Who",
      "warning row-skipped line 4 Who",
    ]);
  });

  test("where no row is the player's, it is said whom the table knows", () => {
    const read = data("P-07", "P-12", "P-07");
    expect(read.shots).toEqual([]);
    expect(outline(read.findings)).toEqual(["error rows-missing Who"]);
    expect(read.findings[0]?.message).toBe(
      'No row is of player "P-01": column "Who" holds "P-07", "P-12". Say how the table calls the player: `column "Who" is player where "P-07" is "P-01"`.',
    );
  });
});

describe("by date", () => {
  const data = (date: string | null, order: "day-month-year" | "month-day-year" | null, ...days: string[]) =>
    importTable(`Day;Carry\n${days.map((day, place) => `${day};${150 + place}\n`).join("")}`, {
      columns: [day(order), carry],
      session: { date },
    });

  test.each([
    "2026-10-12",
    "12.10.2026",
    "12.10.26",
    "12 Oct 2026",
    "Oct 12, 2026",
    "Mon 12 October 2026",
    "12-Oct-26",
    "20261012",
    "2026-10-12T10:42:00Z",
    "12.10.2026 10:42",
  ])("%s is the day", (text) => {
    const read = data("2026-10-12", null, text, "2026-10-13");
    expect([readings(read, "carry"), read.findings]).toEqual([[150], []]);
    expect(read.files[0]?.others).toBe(1);
  });

  test("a time behind the date tells when the shot was hit, unless it is midnight, or another column is the time", () => {
    const times = (...rows: string[]) => data("2026-10-12", null, ...rows).shots.map(({ time }) => time);
    expect(times("12.10.2026 10:42", "12.10.2026", "2026-10-12 00:00")).toEqual([38520, null, null]);
    const both = importTable("Day;At;Carry\n2026-10-12T09:00;10:42;150\n2026-10-12T09:01;;151\n", {
      columns: [day(), column("At", { kind: "time" }), carry],
      session: { date: "2026-10-12" },
    });
    expect(both.shots.map(({ time }) => time)).toEqual([38520, null]);
  });

  test("day or month first is what the source says", () => {
    const days = ["10/12/2026", "12/10/2026", "12/11/2026"];
    expect(readings(data("2026-10-12", "day-month-year", ...days), "carry")).toEqual([151]);
    expect(readings(data("2026-10-12", "month-day-year", ...days), "carry")).toEqual([150]);
  });

  test("or what another row proves", () => {
    expect(readings(data("2026-10-12", null, "12/10/2026", "10/12/2026", "31/10/2026"), "carry")).toEqual([
      150,
    ]);
    expect(readings(data("2026-10-12", null, "12/10/2026", "10/12/2026", "10/31/2026"), "carry")).toEqual([
      151,
    ]);
  });

  test("else it is one error, which says what to write", () => {
    const read = data("2026-10-12", null, "12/10/2026", "10/12/2026");
    expect(read.shots).toEqual([]);
    expect(outline(read.findings)).toEqual(["error date-ambiguous Day"]);
    expect(read.findings[0]?.message).toContain('`column "Day" is date as day-month-year`');
  });

  test("and where both mean the same day nobody needs to say", () => {
    expect(readings(data("2026-10-10", null, "10/10/2026", "11/10/2026"), "carry")).toEqual([150]);
  });

  test("a session without a date takes all days, with a warning", () => {
    const read = data(null, null, "2026-10-12", "2026-10-13");
    expect(readings(read, "carry")).toEqual([150, 151]);
    expect(outline(read.findings)).toEqual(["warning date-missing Day"]);
  });

  test("a day without a row is one error; a date that cannot be read is nobody's", () => {
    const read = data("2026-10-14", null, "2026-10-12", "sometime", "2026-02-30");
    expect(outline(read.findings)).toEqual([
      "warning row-skipped line 3 Day",
      "warning row-skipped line 4 Day",
      "error rows-missing Day",
    ]);
  });
});

test("by session, whatever the case and the zeros", () => {
  const columns = [column("Lesson", { kind: "session" }), carry];
  const data = importTable("Lesson;Carry\nlesson 02;150\nLesson 3;151\n", {
    columns,
    session: { name: "Lesson 2" },
  });
  expect(readings(data, "carry")).toEqual([150]);
});

test("the time of day is read from a time, or from a date with one, as the clock showed it", () => {
  const columns = [column("When", { kind: "time" }), carry];
  const data = importTable(
    "When;Carry\n10:42;1\n10:42:07.5;2\n1:05 PM;3\n2026-10-12T10:42:00+02:00;4\n;5\nnoon;6\n",
    { columns },
  );
  expect(data.shots.map(({ time }) => time)).toEqual([38520, 38527.5, 47100, 38520, null, null]);
  expect(outline(data.findings)).toEqual(["warning cell-unreadable line 7 When"]);
});

test("texts for no reading count in every column", () => {
  const data = importTable("Who;Carry\nP-01;n/a\nP-01;--\nP-01;150\nN/A;151\n", {
    columns: [who, carry],
    source: { blanks: ["n/a", "no data"] },
  });
  expect(readings(data, "carry")).toEqual([undefined, undefined, 150]);
  expect(outline(data.findings)).toEqual(["warning row-skipped line 5 Who"]);
});

test("thousands are marked as the source says, and not otherwise", () => {
  const spin = column("Spin", metricColumn("carry", "m"));
  const read = (thousands: "comma" | "point" | "space" | "apostrophe" | null, decimal: "comma" | "point") =>
    readings(
      importTable('Spin;x\n2,345;\n2.345;\n2 345;\n"2\'345";\n', {
        columns: [spin],
        metrics: [],
        source: { thousands, decimal },
      }),
      "carry",
    );
  expect(read("comma", "point")).toEqual([2345, 2.345, undefined, undefined]);
  expect(read("point", "comma")).toEqual([2.345, 2345, undefined, undefined]);
  expect(read("space", "point")).toEqual([undefined, 2.345, 2345, undefined]);
  expect(read("apostrophe", "point")).toEqual([undefined, 2.345, undefined, 2345]);
  expect(read(null, "point")).toEqual([2345, 2.345, 2345, 2345]);
});

test("texts for a side mean what the source says", () => {
  const data = importTable("Side\n3 D\n4 G\nG 5\n-1\n2 X\n", {
    columns: [
      column("Side", {
        kind: "metric",
        metric: "offline",
        unit: { symbol: "m", factor: 1 },
        positive: { word: "left", sign: -1, handed: false },
        sides: [
          { text: "D", direction: { word: "right", sign: 1, handed: false } },
          { text: "g", direction: { word: "left", sign: -1, handed: false } },
        ],
        sidesIn: null,
      }),
    ],
  });
  expect(readings(data, "offline")).toEqual([3, -4, -5, 1, undefined]);
  expect(outline(data.findings)).toEqual(["warning cell-unreadable line 6 Side"]);
});
