/** From the rows of one table to shots that know everything but their block. */

import type { Metric, ScoringInput, Source } from "../../shared/plan-model.ts";
import { formatReading } from "../../shared/quantity.ts";
import type { Row } from "../../shared/session-data.ts";
import { blockLookup } from "./blocks.ts";
import { clubLookup } from "./clubs.ts";
import { type Bound, type Columns, stateHand } from "./columns.ts";
import { list, plural, quote, type Report } from "./finding.ts";
import { nearest } from "./nearest.ts";
import { type DecimalMark, isBlank, parseNumber } from "./number.ts";
import { type Notation, readCell } from "./reading.ts";
import type { Lookup } from "./spelling.ts";
import type { TableRow } from "./table.ts";

/** A shot as its row has it. */
export interface Hit {
  readonly row: Row;
  /** SI units, target frame. */
  readonly values: Record<string, number>;
  readonly club: string | null;
  /** The block the row names; null where it names none the plan has; undefined where it says nothing. */
  readonly namedBlock: string | null | undefined;
  readonly excluded: string | null;
}

/**
 * Reads the shots. A cell that cannot be read, a club or block that is not known, and a reading that is implausible
 * are reported as warnings; the first three are then unknown, the last is kept. Where several columns hold the same
 * metric, the first one in the source that has a reading counts. Linear in cells.
 */
export function readHits(
  rows: readonly TableRow[],
  columns: Columns,
  source: Source,
  file: string,
  input: ScoringInput,
  report: Report,
): Hit[] {
  const readers = columns.metrics.map((column) => metricReader(column, source, input, report));
  const clubs = columns.clubs.map((column) => {
    const unknown = new Unknown(column.header, (found) => unknownClub(found, source, input));
    return { column, find: clubLookup(column.content.spellings, input.clubs), unknown };
  });
  const blocks = columns.blocks.map((column) => {
    const unknown = new Unknown(column.header, (found) => unknownBlock(found, input));
    return { column, find: blockLookup(input.plan), unknown };
  });
  const hits = rows.map((row): Hit => {
    const values: Record<string, number> = {};
    for (const read of readers) read(row, values);
    return {
      row: { file, line: row.line },
      values,
      club: named(row, clubs) ?? null,
      namedBlock: named(row, blocks),
      excluded: exclusion(row, columns),
    };
  });
  for (const { unknown } of clubs) unknown.reportAs("club-unknown", report);
  for (const { unknown } of blocks) unknown.reportAs("block-unknown", report);
  return hits;
}

function metricReader(column: Bound<"metric">, source: Source, input: ScoringInput, report: Report) {
  const { metric: name, unit, positive } = column.content;
  const metric = input.metrics.get(name);
  const { hand } = input.player;
  const directions = metric?.directions ?? [];
  const notation: Notation = { decimal: source.decimal, unit, positive, directions, hand };
  const plausible = metric === undefined ? null : plausibleRange(metric, hand);
  return ({ cells, line }: TableRow, values: Record<string, number>): void => {
    const text = cells[column.index] ?? "";
    const reading = readCell(text, notation);
    if (reading === "blank") return;
    const about = { line, column: column.header, text: text.trim() };
    if (reading === "hand-missing") {
      const message = `Which side ${quote(text.trim())} in column ${quote(column.header)} means depends on the side the player swings from; the reading is left unknown. ${stateHand(input.player)}`;
      report({ ...about, code: "hand-missing", severity: "warning", message });
    } else if (reading === "unreadable") {
      const message = `${quote(text.trim())} in column ${quote(column.header)} is not ${expected(notation)}; the reading is left unknown.${otherMark(text, source)}`;
      report({ ...about, code: "cell-unreadable", severity: "warning", message });
    } else {
      if (
        metric !== undefined &&
        plausible !== null &&
        (reading < plausible.low || reading > plausible.high)
      ) {
        const [low, high] = [plausible.low, plausible.high].map((end) =>
          formatReading(end, metric, hand ?? "right", unit),
        );
        const message = `${quote(text.trim())} in column ${quote(column.header)} is no plausible ${name}, which lies between ${low} and ${high}. The reading is kept: check the unit and the sign of the column in source ${quote(source.name)}.`;
        report({ ...about, code: "value-implausible", severity: "warning", message });
      }
      if (!Object.hasOwn(values, name)) values[name] = reading;
    }
  };
}

/** The range is given for a right-hander; where the metric's words mirror with the hand, so does the range. */
function plausibleRange(metric: Metric, hand: ScoringInput["player"]["hand"]): Metric["plausible"] {
  const { plausible, directions } = metric;
  const mirrored = hand === "left" && directions.some((direction) => direction.handed);
  return plausible !== null && mirrored ? { low: -plausible.high, high: -plausible.low } : plausible;
}

function expected({ unit, directions }: Notation): string {
  const words = [...new Set(directions.map((direction) => direction.word))];
  const inUnit = unit.symbol === "" ? "" : ` in ${unit.symbol}`;
  return words.length === 0 ? `a number${inUnit}` : `a number${inUnit}, with or without ${words.join(", ")}`;
}

/** A hint where the text would be a number if decimals stood after the other mark. */
function otherMark(text: string, source: Source): string {
  const other: DecimalMark = source.decimal === "comma" ? "point" : "comma";
  return parseNumber(text, other) === undefined
    ? ""
    : ` Where decimals stand after a ${other}, write \`decimal ${other}\` in source ${quote(source.name)}.`;
}

interface NameColumn {
  readonly column: { readonly index: number };
  readonly find: Lookup;
  readonly unknown: Unknown;
}

/** What the first of the columns that says anything names; null where that is not known, undefined where none says anything. */
function named(row: TableRow, columns: readonly NameColumn[]): string | null | undefined {
  for (const { column, find, unknown } of columns) {
    const text = (row.cells[column.index] ?? "").trim();
    if (isBlank(text)) continue;
    const name = find(text);
    if (name === undefined) unknown.note(text, row.line);
    return name ?? null;
  }
  return undefined;
}

function exclusion(row: TableRow, columns: Columns): string | null {
  for (const { index, header, content } of columns.exclusions) {
    const text = (row.cells[index] ?? "").trim().toLowerCase();
    const mark = content.texts.find((mark) => mark.trim().toLowerCase() === text);
    if (mark !== undefined) return `marked ${mark} in column ${header}`;
  }
  return null;
}

interface UnknownText {
  readonly text: string;
  readonly column: string;
  readonly firstLine: number;
  count: number;
}

/** Texts of one column that nothing is known by, each reported once. */
class Unknown {
  readonly #texts = new Map<string, UnknownText>();
  readonly #column: string;
  readonly #message: (found: UnknownText) => string;

  constructor(column: string, message: (found: UnknownText) => string) {
    this.#column = column;
    this.#message = message;
  }

  note(text: string, line: number): void {
    const known = this.#texts.get(text);
    if (known === undefined) this.#texts.set(text, { text, column: this.#column, firstLine: line, count: 1 });
    else known.count++;
  }

  reportAs(code: "club-unknown" | "block-unknown", report: Report): void {
    for (const found of this.#texts.values()) {
      const { text, column, firstLine } = found;
      report({ code, severity: "warning", line: firstLine, column, text, message: this.#message(found) });
    }
  }
}

function onRows({ text, column, count, firstLine }: UnknownText): string {
  const first =
    count === 1 ? `in line ${firstLine}` : `on ${plural(count, "row")}, the first in line ${firstLine}`;
  return `${quote(text)} in column ${quote(column)}, ${first},`;
}

function unknownClub(found: UnknownText, source: Source, { clubs }: ScoringInput): string {
  const names = new Map(
    clubs.flatMap((club) => [club.name, ...club.spellings].map((text) => [text, club.name])),
  );
  const meant = names.get(nearest(found.text, names.keys()) ?? "");
  return `${onRows(found)} is no club that is known${meant === undefined ? "" : `; did you mean ${meant}`}? Say so in source ${quote(source.name)}: \`column ${quote(found.column)} is club where ${quote(found.text)} is ${meant ?? clubs[0]?.name ?? "…"}\`.`;
}

function unknownBlock(found: UnknownText, { plan }: ScoringInput): string {
  const names = plan.blocks.map((block) => block.name);
  const meant = nearest(found.text, names);
  return `${onRows(found)} is no block of plan ${quote(plan.name)}${meant === undefined ? "" : `; did you mean ${quote(meant)}`}? It has ${list(names)}.`;
}
