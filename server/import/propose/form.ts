/** How the text of a table is written: found from its beginning. */
import type { Source } from "../../../shared/plan-model.ts";
import { isBlank, parseNumber } from "../cells/number.ts";
import { partsOf } from "../cells/reading.ts";
import { symbolOf } from "../cells/unit-words.ts";
import { cellsIn, gapsIn } from "../table/aligned.ts";
import type { TableRecord } from "../table/delimited.ts";
import { JsonReader, looksLikeJson } from "../table/json.ts";
import { isRule } from "../table/rows.ts";
import { type Parting, recordReader, SEPARATORS, type SeparatorName } from "../table/separators.ts";
import { StatisticRows } from "../table/statistics.ts";
import type { TableRow } from "../table/table.ts";

export interface Form {
  /** Null for JSON. */
  readonly separator: SeparatorName | null;
  /** How its cells are parted; null for JSON. */
  readonly parting: Parting | null;
  readonly decimal: Source["decimal"];
  readonly thousands: Source["thousands"];
  readonly blanks: readonly string[];
  /** Line of the column names, from 1. */
  readonly headerRow: number;
  readonly names: readonly string[];
  /** What stands under each name where the first row holds units; else empty. */
  readonly units: readonly string[];
  /** The shots in the beginning of the table. */
  readonly rows: readonly TableRow[];
  /** What is not certain about the form, for the coach to settle. */
  readonly doubts: readonly string[];
}

/** In which of the first records the header is looked for. */
const HEADER_SEARCH = 50;
/** A line that stands in quotation marks as a whole. */
const LINE_IN_QUOTES = /^"(?:[^"\n]|"")*"\s*$/m;
/** How much of the text under a line is looked at to find what its names stand over. */
const LONGEST_BLOCK = 16_384;
/** Texts that mean that nothing was measured, where they stand among numbers. */
const NO_READING = new Set(
  "n/a na n.a. nan null none error err #n/a #value! #div/0! no-read noread miss missing ? * . x xx inf undefined invalid".split(
    " ",
  ),
);

/**
 * Finds the form of a table from the beginning of its text. `isKnown` tells a name that the vocabulary knows: it finds the
 * header, and so the separator, where counting alone would be deceived by decimal commas. Undefined where there is no table.
 */
export function findForm(
  text: string,
  isWhole: boolean,
  isKnown: (name: string) => boolean,
): Form | undefined {
  const beginning = text.replace(/^\uFEFF/, "");
  if (beginning.includes("\0")) return undefined;
  return looksLikeJson(beginning) ? jsonForm(beginning, isWhole) : delimitedForm(beginning, isWhole, isKnown);
}

function jsonForm(text: string, isWhole: boolean): Form | undefined {
  const rows: TableRow[] = [];
  const reader = new JsonReader(text, "point", { record: (row) => rows.push(row), unreadable: () => {} });
  reader.push(text);
  if (isWhole) reader.end();
  if (reader.names.length === 0) return undefined;
  const decimal = { decimal: "point" as const, thousands: null, doubts: [] };
  const shots = rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  return {
    separator: null,
    parting: null,
    ...decimal,
    blanks: blanksIn(shots, "point", null, reader.names.length),
    headerRow: 1,
    names: reader.names,
    units: [],
    rows: shots,
  };
}

interface Reading extends Parting {
  readonly records: readonly TableRow[];
  readonly place: number;
  readonly score: number;
  /** How many names in its header are known. */
  readonly known: number;
}

function delimitedForm(text: string, isWhole: boolean, isKnown: (name: string) => boolean): Form | undefined {
  const partings = Object.keys(SEPARATORS).map(
    (name): Parting => ({ separator: name as SeparatorName, gaps: [], isWrapped: false }),
  );
  if (LINE_IN_QUOTES.test(text.slice(0, LONGEST_BLOCK)))
    partings.push(...partings.map((parting) => ({ ...parting, isWrapped: true })));
  const readings = partings.map((parting) => readingOf(text, isWhole, parting, isKnown));
  const delimited = readings.reduce((one, other) => (other.score > one.score ? other : one));
  const aligned = alignedReading(text, isWhole, isKnown);
  const best = aligned !== undefined && aligned.known > delimited.known ? aligned : delimited;
  const header = best.records[best.place];
  if (header === undefined) return undefined;
  const names = header.cells.map((cell) => cell.trim());
  while (names.length > 1 && names.at(-1) === "") names.pop();
  const under = best.records
    .slice(best.place + 1)
    .filter(
      ({ cells }) =>
        cells.some((cell) => cell.trim() !== "") &&
        !isRule(cells) &&
        !cells.every((cell, at) => cell.trim() === (names[at] ?? "")),
    );
  const hasUnits = under[0] !== undefined && isUnits(under[0]);
  const units = hasUnits ? (under[0]?.cells.map((cell) => cell.trim()) ?? []) : [];
  const rows = withoutStatistics(hasUnits ? under.slice(1) : under);
  const mark = decimalMark(rows);
  return {
    separator: best.separator,
    parting: { separator: best.separator, gaps: best.gaps, isWrapped: best.isWrapped },
    ...mark,
    blanks: blanksIn(rows, mark.decimal, mark.thousands, names.length),
    headerRow: header.line,
    names,
    units,
    rows,
  };
}

/** How well the text is a table with this separator, and which of its records would be the header. */
function readingOf(
  text: string,
  isWhole: boolean,
  parting: Parting,
  isKnown: (name: string) => boolean,
): Reading {
  const all: TableRecord[] = [];
  const reader = recordReader(parting, 1, (record) => all.push(record));
  reader.push(text);
  reader.end();
  const records = isWhole ? all : all.slice(0, -1);
  let [place, score, found] = [-1, 0, 0];
  for (let at = 0; at < Math.min(HEADER_SEARCH, records.length); at++) {
    const cells = records[at]?.cells ?? [];
    const stated = cells.filter((cell) => cell.trim() !== "");
    // A name that stands twice names no column.
    const known = stated.filter(
      (name) => isKnown(name) && stated.indexOf(name) === stated.lastIndexOf(name),
    ).length;
    const words = stated.filter(
      (cell) => /\p{L}/u.test(cell) && parseNumber(cell, "point") === undefined,
    ).length;
    if (words < Math.max(1, 0.6 * stated.length)) continue;
    const under = records.slice(at + 1, at + 200);
    const fitting = under.filter((record) => Math.abs(record.cells.length - cells.length) <= 1).length;
    const share = under.length === 0 ? 0 : fitting / under.length;
    const quality = 10 * known + share * Math.min(stated.length, 8) + (stated.length > 1 ? share : 0);
    if (quality > score + 1e-9) {
      [place, score, found] = [at, quality, known];
    }
  }
  // The header may be repeated further down, where more rows fit.
  const header = records[place]?.cells.join("\n");
  const first = records.findIndex(({ cells }) => cells.join("\n") === header);
  return { ...parting, records, place: Math.min(place, first), score, known: found };
}

/** The reading by the gaps under one of the first lines, where the most names are known. */
function alignedReading(
  text: string,
  isWhole: boolean,
  isKnown: (name: string) => boolean,
): Reading | undefined {
  let best: { known: number; gaps: Parting["gaps"] } | undefined;
  let start = 0;
  for (let line = 0; line < HEADER_SEARCH && start < text.length; line++) {
    const gaps = gapsIn(text.slice(start, start + LONGEST_BLOCK));
    const end = text.indexOf("\n", start);
    const header = text.slice(start, end < 0 ? text.length : end);
    const known = gaps.length === 0 ? 0 : cellsIn(header, gaps).filter(isKnown).length;
    if (known > (best?.known ?? 1)) best = { known, gaps };
    if (end < 0) break;
    start = end + 1;
  }
  return (
    best && readingOf(text, isWhole, { separator: "spaces", gaps: best.gaps, isWrapped: false }, isKnown)
  );
}

function isUnits({ cells }: TableRow): boolean {
  const stated = cells.map((cell) => cell.trim()).filter((cell) => !isBlank(cell));
  const isUnit = (cell: string) => symbolOf(cell.replace(/^[[(]|[\])]$/g, "")) !== undefined;
  const units = stated.filter((cell) => /^[[(].+[\])]$/.test(cell) || isUnit(cell));
  return (
    stated.length > 0 &&
    units.length >= 0.6 * stated.length &&
    stated.every((cell) => !/\d/.test(cell) || isUnit(cell))
  );
}

function withoutStatistics(rows: readonly TableRow[]): TableRow[] {
  const shots: TableRow[] = [];
  const statistics = new StatisticRows<TableRow>(
    ({ cells }) => cells,
    (row) => shots.push(row),
    () => {},
  );
  for (const row of rows) statistics.push(row);
  statistics.end();
  return shots;
}

/** The decimal mark and the mark between thousands that most numbers are written with. */
function decimalMark(rows: readonly TableRow[]): Pick<Form, "decimal" | "thousands" | "doubts"> {
  const seen = { comma: 0, point: 0, threeAfterComma: 0, threeAfterPoint: 0, ratios: { comma: 0, point: 0 } };
  const marks = { comma: 0, point: 0, space: 0, apostrophe: 0 };
  for (const { cells } of rows.slice(0, 500)) {
    for (const cell of cells) {
      const number = partsOf(cell)?.number.replace(/^[-+−–]\s?/, "");
      if (number === undefined || /[a-z:/]/i.test(number)) continue;
      if (/^\d*,(?:\d{1,2}|\d{4,})$/.test(number) || /^\d{1,3}(?:[.'’\s]\d{3})+,\d+$/.test(number))
        seen.comma++;
      else if (/^\d*\.(?:\d{1,2}|\d{4,})$/.test(number) || /^\d{1,3}(?:[,'’\s]\d{3})+\.\d+$/.test(number))
        seen.point++;
      else if (/^0,\d{3}$/.test(number)) seen.comma++;
      else if (/^0\.\d{3}$/.test(number)) seen.point++;
      else if (/^1,[0-6]\d\d$/.test(number) || /^1\.[0-6]\d\d$/.test(number))
        seen.ratios[number[1] === "," ? "comma" : "point"]++;
      else if (/^[1-9]\d{0,2},\d{3}$/.test(number)) seen.threeAfterComma++;
      else if (/^[1-9]\d{0,2}\.\d{3}$/.test(number)) seen.threeAfterPoint++;
      if (/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(number)) marks.comma++;
      if (/^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/.test(number)) marks.point++;
      if (/^\d{1,3}(?:[ \u00a0\u2007\u2009\u202f]\d{3})+(?:[.,]\d+)?$/.test(number)) marks.space++;
      if (/^\d{1,3}(?:['’]\d{3})+(?:[.,]\d+)?$/.test(number)) marks.apostrophe++;
    }
  }
  const isEven = seen.comma === 0 && seen.point === 0;
  // 1.352 alone may be a ratio: where everything that is written so is one, it has decimals.
  if (isEven && seen.threeAfterComma + seen.threeAfterPoint === 0) {
    seen.comma += seen.ratios.comma;
    seen.point += seen.ratios.point;
  }
  // Numbers such as 6,483 alone are thousands: spin is the only thing so large, and hardly anything has three decimals.
  const decimal =
    seen.comma > seen.point || (isEven && seen.threeAfterPoint > seen.threeAfterComma) ? "comma" : "point";
  const other = decimal === "comma" ? "point" : "comma";
  const thousands =
    marks[other] > 0 ? other : marks.space > 0 ? "space" : marks.apostrophe > 0 ? "apostrophe" : null;
  const doubts: string[] = [];
  const isMixed = Math.min(seen.comma, seen.point) > 0.1 * Math.max(seen.comma, seen.point);
  if (isMixed)
    doubts.push("Some numbers have a decimal comma, others a decimal point: the table may be of two kinds.");
  if (isEven && seen.threeAfterComma + seen.threeAfterPoint > 0) {
    doubts.push(
      `Is ${decimal === "comma" ? "6.483" : "6,483"} more than six thousand here, as was taken, or six and a half?`,
    );
  }
  return { decimal, thousands, doubts };
}

/** The texts that stand for no reading: known ones that stand in columns of numbers. */
function blanksIn(
  rows: readonly TableRow[],
  decimal: Source["decimal"],
  thousands: Source["thousands"],
  width: number,
): string[] {
  const found = new Set<string>();
  for (let at = 0; at < width; at++) {
    const texts = rows.map(({ cells }) => (cells[at] ?? "").trim()).filter((text) => !isBlank(text));
    const blanks = texts.filter((text) => NO_READING.has(text.toLowerCase()));
    const numbers = texts.filter(
      (text) => parseNumber(partsOf(text)?.number ?? "", decimal, thousands) !== undefined,
    );
    if (numbers.length >= 0.5 * (texts.length - blanks.length) && numbers.length > 0)
      for (const text of blanks) found.add(text);
  }
  return [...found].sort();
}
