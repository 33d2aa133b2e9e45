/** A table is the same table in whatever pieces it arrives, and records are what others say they are. */
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SessionImport } from "../../server/import/import-session.ts";
import { TextDecoding } from "../../server/import/table/decode.ts";
import { DelimitedReader, splitText } from "../../server/import/table/delimited.ts";
import { column, metricColumn, scoringInput, source } from "../support/scoring-input.ts";
import { importTable } from "./import-table.ts";

const spectrum = dirname(createRequire(import.meta.url).resolve("csv-spectrum"));

/** Its expectation for one table is not of that table: another telephone number, and no list. */
const NOT_AS_ITS_TABLE = "location_coordinates.csv";

describe("the tables of csv-spectrum", () => {
  test.each(readdirSync(join(spectrum, "csvs")))("%s", (name) => {
    const text = readFileSync(join(spectrum, "csvs", name), "utf8");
    const json = readFileSync(join(spectrum, "json", name.replace(/csv$/, "json")), "utf8");
    // A line end inside a cell is one line feed, whatever the file has.
    const expected = [JSON.parse(json.replaceAll("\\r\\n", "\\n"))].flat();
    if (name === NOT_AS_ITS_TABLE) expected[0]["Contact Phone Number"] = "2095257564";
    const { records, broken } = splitText(text, ",");
    const [header, ...rows] = records.map(({ cells }) => cells);
    const objects = rows.map((cells) =>
      Object.fromEntries((header ?? []).map((key, place) => [key, cells[place]])),
    );
    expect(objects).toEqual(expected);
    expect(broken).toBeUndefined();
  });
});

/** Lines that hold what makes a table hard to read. */
const hardText = fc
  .array(
    fc.constantFrom(
      "a",
      "1.5",
      ";",
      ";",
      '"',
      '""',
      "\n",
      "\n",
      "\r\n",
      "\r",
      " ",
      "é",
      '"x;y"',
      '"two\nlines"',
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(""));

/** A text cut at some places. */
const cuts = fc.array(fc.nat(60), { maxLength: 6 });

function pieces<T extends { length: number; slice(from: number, to: number): T }>(
  whole: T,
  places: readonly number[],
): T[] {
  const at = [0, ...places.map((place) => Math.min(place, whole.length)), whole.length].sort((a, b) => a - b);
  return at.slice(1).map((end, index) => whole.slice(at[index] ?? 0, end));
}

test("records do not depend on the pieces a text comes in", () => {
  fc.assert(
    fc.property(hardText, cuts, (text, places) => {
      const records: unknown[] = [];
      const reader = new DelimitedReader(";", 1, (record) => records.push(record));
      for (const piece of pieces(text, places)) reader.push(piece);
      reader.end();
      expect({ records, broken: reader.broken }).toEqual(splitText(text, ";"));
    }),
    { numRuns: 2000 },
  );
});

test("records with quotation marks in order are those of another reader", () => {
  const cell = fc.oneof(
    fc.constantFrom("", "a", "1,5", "é"),
    fc
      .string({ unit: fc.constantFrom("a", ";", '"', "\n", " "), maxLength: 5 })
      .map((text) => `"${text.replaceAll('"', '""')}"`),
  );
  const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(table, (rows) => {
      const text = rows.map((cells) => cells.join(";")).join("\n");
      const theirs = parse(text, {
        delimiter: ";",
        record_delimiter: "\n",
        relax_column_count: true,
      }) as string[][];
      expect(splitText(text, ";").records.map(({ cells }) => cells)).toEqual(theirs);
    }),
    { numRuns: 1000 },
  );
});

test("text does not depend on the pieces its bytes come in", () => {
  const bytes = fc.oneof(
    fc
      .string({ unit: fc.constantFrom("a", "é", "€", "−", "😀", "\n") })
      .map((text) => new TextEncoder().encode(`abcd${text}`)),
    fc
      .uint8Array({ minLength: 8, maxLength: 40 })
      .map((bytes) => Uint8Array.of(0x61, 0x62, 0x63, 0x64, ...bytes)),
  );
  const decode = (parts: readonly Uint8Array[]) => {
    const decoding = new TextDecoding();
    return parts.map((part) => decoding.push(part)).join("") + decoding.end();
  };
  fc.assert(
    fc.property(bytes, cuts, (bytes, places) => {
      const start = bytes.slice(0, 4); // which, with or without a mark, settles UTF-16
      const rest = bytes.slice(4);
      expect(decode([start, ...pieces(rest, places)])).toBe(decode([start, rest]));
    }),
    { numRuns: 1000 },
  );
});

test.each([
  ["a table", 'Carry;Note\r\n150;é\r\n151;"a\r\nb"\r\nx;\r\n152;c'],
  ["an array", '[{"Carry": 150, "Note": "é]"},\n {"Carry": "x"}, {"Note": "\\"{"}, {"Carry": 151.5}]'],
  ["lines of objects", '{"Carry": 150}\n\n{"Carry": 151, "Note": "é"}\nnothing\n{"Carry": 152}'],
  ["an object around", '{"player": {"name": "P-01"}, "shots": [\n{"Carry": 150},\n{"Carry": 151}]}'],
])("%s, byte by byte, is the same session", (_, text) => {
  const columns = [column("Carry", metricColumn("carry", "m"))];
  const session = new SessionImport(scoringInput({ sources: [source(columns)] }));
  const file = session.open("shots.csv", "Bay table");
  for (const byte of new TextEncoder().encode(text)) file.push(Uint8Array.of(byte));
  file.end("0".repeat(64));
  const whole = importTable(text, { columns });
  expect(session.data()).toEqual(whole);
  expect(whole.shots.length).toBeGreaterThan(1);
});
