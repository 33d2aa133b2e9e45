/** From the rows of one table to shots that know everything but their block. */
import type { ScoringInput, Source } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import type { Shot } from "../../../shared/session-data.ts";
import type { Columns } from "../columns.ts";
import { completer, type Known, type Read } from "../derive/complete-shot.ts";
import { quote, type Report } from "../finding.ts";
import type { Membership } from "../own-rows.ts";
import type { Lookup } from "../spelling.ts";
import type { TableForm, TableRow } from "../table/table.ts";
import { type BlankTest, blankTest } from "./blank.ts";
import { blockLookup } from "./blocks.ts";
import { categoryLookup } from "./categories.ts";
import { clubLookup } from "./clubs.ts";
import { metricReader } from "./metric-reader.ts";
import { clockOf } from "./moment.ts";
import { UnknownNames, unknownBlock, unknownCategory, unknownClub } from "./unknown-names.ts";

/** A shot as its row has it, and what follows from that. */
export interface Hit extends Omit<Shot, "block">, Known {
  /** The block the row names; null where it names none the plan has; undefined where it says nothing. */
  readonly namedBlock: string | null | undefined;
  /** What the order of the shots goes by; empty where the rows stand in order. */
  readonly order: string;
  readonly membership: Membership;
}

/** What of a table its shots are read by. */
export interface HitContext {
  readonly columns: Columns;
  readonly source: Source;
  readonly input: ScoringInput;
  /** How shots call the file. */
  readonly file: string;
  readonly form: TableForm;
  /** The column names. */
  readonly names: readonly string[];
}

/**
 * Reads shots row by row. A cell that cannot be read, a name that is not known, and a reading that is implausible are
 * reported as warnings; the first two are then unknown, the last is kept. Where several columns hold the same metric, the
 * first one in the source that has a reading counts.
 *
 * A row that ends before any reading is no shot, and neither is one that holds nothing but a remark or a heading. A row with
 * more cells than there are columns has no readings: somewhere in it a separator stands for something else, and nobody can
 * tell which cells it has moved. Both are reported.
 */
export class HitReader {
  readonly #context: HitContext;
  readonly #report: Report;
  readonly #readMetrics: readonly ReturnType<typeof metricReader>[];
  readonly #clubs: readonly NameColumn[];
  readonly #blocks: readonly NameColumn[];
  readonly #categories: readonly (NameColumn & { readonly metric: string })[];
  readonly #isBlank: BlankTest;
  readonly #firstReading: number;
  /** Where the first column that has a name stands, and whether it is read for anything but a club. */
  readonly #first: number;
  readonly #isFirstRead: boolean;
  readonly #clubNamed: Lookup;
  readonly #complete: (read: Read) => Known;

  constructor(context: HitContext, report: Report) {
    const { columns, source, input } = context;
    this.#context = context;
    this.#report = report;
    this.#isBlank = blankTest(source);
    this.#readMetrics = columns.metrics.map((column) => metricReader(column, source, input, report));
    this.#clubs = columns.clubs.map((column) => {
      const unknown = new UnknownNames(column.header, (found) => unknownClub(found, source, input));
      return { column, find: clubLookup(column.content.spellings, input.clubs), unknown };
    });
    this.#blocks = columns.blocks.map((column) => {
      const unknown = new UnknownNames(column.header, (found) => unknownBlock(found, input));
      return { column, find: blockLookup(input.plan), unknown };
    });
    this.#categories = columns.categories.map((column) => {
      const { metric, spellings } = column.content;
      const names = (input.metrics.get(metric)?.categories ?? []).map(({ name }) => name);
      const unknown = new UnknownNames(column.header, (found) =>
        unknownCategory(found, metric, names, source),
      );
      return { column, metric, find: categoryLookup(spellings, names), unknown };
    });
    this.#complete = completer(input);
    const { clubs, order, ...others } = columns;
    const read = [...Object.values(others).flat(), ...(order === null ? [] : [order])];
    this.#first = Math.max(
      0,
      context.names.findIndex((name) => name !== ""),
    );
    this.#isFirstRead = context.form === "json" || read.some(({ index }) => index === this.#first);
    this.#clubNamed = clubLookup([], input.clubs);
    this.#firstReading = Math.min(...columns.metrics.map((column) => column.index));
  }

  /** The shot on a row; undefined where the row is none. */
  read(row: TableRow, membership: Membership): Hit | undefined {
    const shape = this.#shapeOf(row);
    if (shape === "no-shot" || this.#isRemark(row)) return undefined;
    const { columns, file } = this.#context;
    const values: Record<string, number> = {};
    const roundings: Record<string, number> = {};
    if (shape !== "shifted") for (const read of this.#readMetrics) read(row, values, roundings);
    const categories = this.#categoriesOf(row);
    const club = this.#named(row, this.#clubs) ?? null;
    const known = this.#complete({ values, roundings, categories, club });
    return {
      row: { file, line: row.line },
      values: known.values,
      categories: known.categories,
      derived: known.derived,
      disagreements: known.disagreements,
      club,
      time: this.#timeOf(row),
      namedBlock: this.#named(row, this.#blocks),
      excluded: this.#exclusion(row),
      order: columns.order === null ? "" : (row.cells[columns.order.index] ?? "").trim(),
      membership,
    };
  }

  /** Reports the names that are not known. */
  reportUnknown(report: Report): void {
    for (const { unknown } of this.#clubs) unknown.reportAs("club-unknown", report);
    for (const { unknown } of this.#blocks) unknown.reportAs("block-unknown", report);
    for (const { unknown } of this.#categories) unknown.reportAs("category-unknown", report);
  }

  #shapeOf({ line, cells }: TableRow): "whole" | "shifted" | "no-shot" {
    const { names, form, columns } = this.#context;
    const width = names.length;
    if (cells.length === width || form === "json") return "whole";
    const has = `Line ${line} has ${plural(cells.length, "cell")} where the header has ${width}`;
    const report = (message: string, text?: string) =>
      this.#report({
        code: "row-ragged",
        severity: "warning",
        line,
        message,
        ...(text === undefined ? {} : { text }),
      });
    if (columns.metrics.length > 0 && cells.length <= this.#firstReading) {
      const first = cells.find((cell) => cell.trim() !== "")?.trim() ?? "";
      report(`${has}, and ends before any reading, so it was not taken for a shot.`, first);
      return "no-shot";
    }
    if (cells.length < width) {
      const missing = columns.metrics.filter((column) => column.index >= cells.length).length;
      const are = missing === 1 ? "is" : "are";
      if (missing > 0) report(`${has}; ${plural(missing, "reading")} at its end ${are} left unknown.`);
      return "whole";
    }
    if (cells.slice(width).every((cell) => cell.trim() === "")) return "whole";
    report(
      `${has}. One of its texts or numbers must hold the separator, so its readings may stand in the wrong columns and are left unknown. Put that cell in quotation marks.`,
    );
    return "shifted";
  }

  /** A text that stands alone in the first column, and is no name that is read there: `Note: windy`, or a club over its shots. */
  #isRemark({ line, cells }: TableRow): boolean {
    const first = this.#first;
    const text = (cells[first] ?? "").trim();
    if (
      this.#isFirstRead ||
      !/\p{L}/u.test(text) ||
      cells.some((cell, at) => at !== first && cell.trim() !== "")
    )
      return false;
    const clubs = this.#clubs.filter(({ column }) => column.index === first);
    const isHeading = clubs.length === 0 && this.#clubNamed(text) !== undefined;
    const isRemark = clubs.every(({ find }) => find(text) === undefined) && REMARK.test(text);
    if (!isHeading && !isRemark) return false;
    const what = isHeading ? "the heading of shots with that club" : "a remark";
    const advice = isHeading ? " To have the club read, write it into a column of its own." : "";
    this.#report({
      code: "row-skipped",
      severity: "warning",
      line,
      text,
      message: `Line ${line} holds nothing but ${quote(text)}, so it was taken for ${what} and not for a shot.${advice}`,
    });
    return true;
  }

  #categoriesOf(row: TableRow): Record<string, string> {
    const categories: Record<string, string> = {};
    for (const column of this.#categories) {
      const name = this.#named(row, [column]);
      if (typeof name === "string") categories[column.metric] ??= name;
    }
    return categories;
  }

  /** What the first of the columns that says anything names; null where that is not known, undefined where none says anything. */
  #named(row: TableRow, columns: readonly NameColumn[]): string | null | undefined {
    for (const { column, find, unknown } of columns) {
      const text = (row.cells[column.index] ?? "").trim();
      if (this.#isBlank(text)) continue;
      const name = find(text);
      if (name === undefined) unknown.note(text, row.line);
      return name ?? null;
    }
    return undefined;
  }

  #timeOf(row: TableRow): number | null {
    for (const { index, header } of this.#context.columns.times) {
      const text = (row.cells[index] ?? "").trim();
      if (this.#isBlank(text)) continue;
      const time = clockOf(text);
      if (time !== undefined) return time;
      this.#report({
        code: "cell-unreadable",
        severity: "warning",
        line: row.line,
        column: header,
        text,
        message: `${quote(text)} in column ${quote(header)} is no time of day such as 10:42 or 10:42:07; when the shot was hit is left unknown.`,
      });
    }
    return this.#context.columns.times.length > 0 ? null : this.#timeOfDate(row);
  }

  /** Where no column is the time of day, it may stand behind the date. Midnight stands there where nothing was recorded. */
  #timeOfDate({ cells }: TableRow): number | null {
    const times = this.#context.columns.dates.map(({ index }) => clockOf(cells[index] ?? ""));
    return times.find((time) => time !== undefined && time > 0) ?? null;
  }

  #exclusion(row: TableRow): string | null {
    for (const { index, header, content } of this.#context.columns.exclusions) {
      const text = (row.cells[index] ?? "").trim().toLowerCase();
      const mark = content.texts.find((mark) => mark.trim().toLowerCase() === text);
      if (mark !== undefined)
        return text === ""
          ? `blank in column ${quote(header)}`
          : `marked ${quote(mark)} in column ${quote(header)}`;
    }
    return null;
  }
}

/** A text that begins or goes on as remarks do, rather than names. */
const REMARK = /^[*#†‡(/]|:(?:\s|$)|(?:\S+\s+){4}/;

interface NameColumn {
  readonly column: { readonly index: number };
  readonly find: Lookup;
  readonly unknown: UnknownNames;
}
