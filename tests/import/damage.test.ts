/** Whatever the bytes, there is a result: shots, or one error that says what is wrong. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SessionData } from "../../shared/session-data.ts";
import { block, column, metricColumn, scoringInput, source } from "../support/scoring-input.ts";
import { importSession } from "./import-session.ts";
import { file, importTable, outline } from "./import-table.ts";

const columns = [
  column("Carry", metricColumn("carry", "m")),
  column("Path", metricColumn("club-path", "°", "in-to-out")),
  column("Club", { kind: "club", spellings: [] }),
  column("Drill", { kind: "block" }),
  column("Use", { kind: "exclusion", texts: ["N"] }),
];
/** Columns that part a table into sessions, and others whose cells have many forms. */
const more = [
  column("Who", { kind: "player", spellings: [{ text: "N", player: "P-01" }] }),
  column("Day", { kind: "date", order: null }),
  column("Lesson", { kind: "session" }),
  column("Shape", { kind: "category", metric: "shape", spellings: [{ text: "N", category: "draw" }] }),
  column("Time", { kind: "time" }),
];
const header = "Time;Carry;Path;Club;Drill;Use;Who;Day;Lesson;Shape";

describe("what is no table is one error", () => {
  test.each([
    ["zero bytes", new Uint8Array(5000)],
    ["a table with zero bytes in it", `${header}\n10:42;150\0;1;7i;Gate;Y\n`],
    ["a workbook", Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0, 6, 0, 8, 0, 0, 0)],
    ["a megabyte on one line", "x".repeat(1_000_000)],
    ["a megabyte of separators", ";".repeat(1_000_000)],
    ["a megabyte of quotation marks", '"'.repeat(1_000_000)],
    ["a megabyte of blank lines and a word", `${"\n".repeat(1_000_000)}x`],
    ["a page", "<!DOCTYPE html>\n<html><body><table><tr><td>Carry</td></tr></table></body></html>"],
    ["a page under the name of a table", " <table>\n<tr><th>Carry</th></tr>\n<tr><td>150</td></tr></table>"],
    ["a PDF", "%PDF-1.7\n1 0 obj\n<< /Carry 150 >>"],
    ["prose", "We hit some wedges, then irons;\nit went well, mostly."],
  ])("%s", (_, content) => {
    const data = importTable(content, { columns });
    expect(outline(data.findings)).toHaveLength(1);
    expect(data.findings[0]).toMatchObject({ code: "not-a-table", severity: "error" });
    expect(data.findings[0]?.message.length).toBeLessThan(1000);
    expect(data.shots).toEqual([]);
  });

  test("a quotation mark that is never closed", () => {
    const data = importTable(`${header}\n10:42;150;1;"7i;Gate;Y\n${"10:43;150;1;7i;Gate;Y\n".repeat(1000)}`, {
      columns,
    });
    expect(outline(data.findings)).toEqual(["error file-unreadable line 2 Club"]);
  });

  test("a quotation mark that is never closed, in the header", () => {
    const data = importTable('Time;"Carry;Path;Club\n10:42;150;1;7i\n', { columns });
    expect(data.findings).toHaveLength(1);
    expect(data.findings[0]?.severity).toBe("error");
  });
});

/** A cell that may be right, wrong, or hostile. */
const cell = fc.oneof(
  fc.constantFrom(
    "150",
    "-1,5",
    "7i",
    "Gate",
    "N",
    "10:42",
    "",
    '"',
    '""',
    "1e999",
    "NaN",
    "__proto__",
    "2° L",
    "=1+1",
    "12/10/2026",
    "2026-10-12",
    "P-01",
    "Test session",
    "[{",
    "\\",
  ),
  fc.string({ unit: "binary", maxLength: 8 }),
);
const brokenTable = fc
  .array(
    fc.array(cell, { maxLength: 11 }).map((cells) => cells.join(";")),
    { maxLength: 20 },
  )
  .map((lines) => [header, ...lines].join("\n"));

const content = fc.oneof(
  fc.uint8Array({ maxLength: 400 }),
  brokenTable,
  brokenTable.map((text) => new TextEncoder().encode(text)),
  fc.string({ unit: "binary", maxLength: 200 }),
  fc.json().map((json) => `[${json}]`),
  fc
    .array(fc.dictionary(fc.constantFrom(...header.split(";")), fc.oneof(cell, fc.double(), fc.jsonValue())))
    .map((shots) => JSON.stringify(shots)),
);

test("no content breaks the import, and every reading is a finite number", () => {
  fc.assert(
    fc.property(
      content,
      fc.record({
        separator: fc.constantFrom(
          null,
          "comma" as const,
          "semicolon" as const,
          "tab" as const,
          "pipe" as const,
        ),
        thousands: fc.constantFrom(null, "comma" as const, "point" as const, "space" as const),
        decimal: fc.constantFrom("comma" as const, "point" as const),
        headerRow: fc.oneof({ weight: 5, arbitrary: fc.constant(1) }, fc.integer({ min: 2, max: 4 })),
        orderedBy: fc.constantFrom(null, "Time"),
      }),
      fc.constantFrom("left" as const, "right" as const, null),
      fc.subarray(more),
      fc.constantFrom("2026-10-12", null),
      (content, stated, hand, others, date) => {
        const input = scoringInput({
          hand,
          session: { date },
          sources: [source([...columns, ...others], stated)],
          blocks: [block("Gate", 3), block("Test", 2)],
        });
        const data = importSession(input, [file(content)]);
        expect(SessionData.safeParse(data).success).toBe(true);
        for (const { values } of data.shots) expect(Object.values(values).every(Number.isFinite)).toBe(true);
        const failed = data.findings.some(({ severity }) => severity === "error");
        expect(failed).toBe(data.shots.length === 0);
        expect(importSession(input, [file(content)])).toEqual(data);
      },
    ),
    { numRuns: 500 },
  );
});
