/** The same table, written in every way that is read, is the same table. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Source } from "../../shared/plan-model.ts";
import { column, metricColumn } from "../support/scoring-input.ts";
import { importTable } from "./import-table.ts";

interface Dialect {
  readonly separator: "," | ";" | "\t" | "|";
  readonly decimal: "comma" | "point";
  readonly thousands: "" | "other" | " " | "\u00a0" | "\u202f" | "'" | "’";
  readonly minus: "-" | "\u2212";
  readonly quoted: boolean;
  readonly lineEnd: "\n" | "\r\n" | "\r";
  readonly lastLineEnds: boolean;
  readonly mark: boolean;
  readonly encoding: "utf-8" | "utf-16le" | "latin-1" | "text";
  readonly junk: readonly string[];
  readonly stated: boolean;
}

const dialects: fc.Arbitrary<Dialect> = fc.record({
  separator: fc.constantFrom(",", ";", "\t", "|"),
  decimal: fc.constantFrom("comma", "point"),
  thousands: fc.constantFrom("", "other", " ", "\u00a0", "\u202f", "'", "’"),
  minus: fc.constantFrom("-", "\u2212"),
  quoted: fc.boolean(),
  lineEnd: fc.constantFrom("\n", "\r\n", "\r"),
  lastLineEnds: fc.boolean(),
  mark: fc.boolean(),
  encoding: fc.constantFrom("utf-8", "utf-16le", "latin-1", "text"),
  junk: fc.array(fc.constantFrom("", "Bay 4", 'said "so', ";,;", "Carry"), { maxLength: 3 }),
  stated: fc.boolean(),
});

/** Readings with up to three decimals, as tables have them; null where there is none. */
const reading = fc.option(
  fc
    .integer({ min: -9_999_999, max: 9_999_999 })
    .map((thousandths) => (thousandths === 0 ? 0 : thousandths / 1000)),
);
const note = fc.string({
  unit: fc.constantFrom("a", "é", " ", '"', ",", ";", "\t", "\n", "1", "'"),
  maxLength: 6,
});
const rows = fc.array(fc.tuple(note, reading, reading), { minLength: 1, maxLength: 12 });

function writeNumber(value: number, { decimal, thousands, minus }: Dialect): string {
  const [whole = "", decimals] = String(Math.abs(value)).split(".");
  const other = decimal === "comma" ? "." : ",";
  const grouped = whole.replace(/\B(?=(?:\d{3})+$)/g, thousands === "other" ? other : thousands);
  const fraction = decimals === undefined ? "" : (decimal === "comma" ? "," : ".") + decimals;
  return (value < 0 ? minus : "") + grouped + fraction;
}

function writeTable(
  table: readonly (readonly [string, number | null, number | null])[],
  dialect: Dialect,
): string {
  const { separator, lineEnd, quoted, stated } = dialect;
  const cell = (text: string) =>
    quoted || /[",;|\t\n]/.test(text) || text !== text.trim()
      ? `"${text.replaceAll('"', '""').replaceAll("\n", lineEnd)}"`
      : text;
  const number = (value: number | null) =>
    value === null ? (stated ? "N/A" : "") : writeNumber(value, dialect);
  const lines = [
    ["Note", "Carry", "Side"],
    ...table.map(([note, carry, side]) => [`n${note}`, number(carry), number(side)]),
  ].map((cells) => cells.map(cell).join(separator));
  return [...dialect.junk, ...lines].join(lineEnd) + (dialect.lastLineEnds ? lineEnd : "");
}

function encode(text: string, { encoding, mark }: Dialect): Uint8Array | string {
  const marked = mark ? `\uFEFF${text}` : text;
  switch (encoding) {
    case "text":
      return marked;
    case "latin-1": {
      // What Latin-1 has no character for is written as text has it; most dialects have all.
      const isLatin1 = [...text].every((character) => (character.codePointAt(0) ?? 0) < 256);
      return isLatin1 ? Uint8Array.from(text, (character) => character.charCodeAt(0)) : marked;
    }
    case "utf-8":
      return new TextEncoder().encode(marked);
    case "utf-16le":
      // Without a mark, a text in which few characters are Latin cannot be told from others.
      return new Uint8Array(
        Uint16Array.from([..."\uFEFF", ...text].join(""), (unit) => unit.charCodeAt(0)).buffer,
      );
  }
}

const SEPARATOR_NAMES = { ",": "comma", ";": "semicolon", "\t": "tab", "|": "pipe" } as const;

function statedThousands({ thousands, decimal }: Dialect): Source["thousands"] {
  if (thousands === "") return null;
  if (thousands === "other") return decimal === "comma" ? "point" : "comma";
  return thousands === "'" || thousands === "’" ? "apostrophe" : "space";
}

test("a table reads back to the same numbers in every dialect", () => {
  fc.assert(
    fc.property(rows, dialects, (table, dialect) => {
      const data = importTable(encode(writeTable(table, dialect), dialect), {
        metrics: [],
        columns: [
          column("Carry", metricColumn("carry", "m")),
          column("Side", metricColumn("offline", "m", "right")),
        ],
        source: {
          decimal: dialect.decimal,
          headerRow: dialect.junk.length + 1,
          separator: dialect.stated ? SEPARATOR_NAMES[dialect.separator] : null,
          thousands: dialect.stated ? statedThousands(dialect) : null,
          blanks: ["n/a"],
        },
      });
      const read = data.shots.map(({ values }) => [values.carry ?? null, values.offline ?? null]);
      expect(read).toEqual(table.map(([, carry, side]) => [carry, side]));
      expect(data.findings.filter(({ code }) => code !== "row-ragged")).toEqual([]);
    }),
    { numRuns: 500 },
  );
});
