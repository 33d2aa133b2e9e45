/** One table that nobody has described yet, while it is read. */

import { parseDate } from "../cells/date.ts";
import { clockOf, moment } from "../cells/moment.ts";
import { isBlank, parseNumber } from "../cells/number.ts";
import { quote } from "../finding.ts";
import { TextDecoding } from "../table/decode.ts";
import type { DelimitedReader } from "../table/delimited.ts";
import { JsonReader } from "../table/json.ts";
import { whyBinary, whyNoTable } from "../table/no-table.ts";
import { isRule } from "../table/rows.ts";
import { recordReader } from "../table/separators.ts";
import { firstText, StatisticRows } from "../table/statistics.ts";
import { type ProposedColumn, proposeColumns } from "./columns.ts";
import { type Form, findForm } from "./form.ts";
import { Groups } from "./groups.ts";
import {
  columnsBy,
  type DeclaredSource,
  plansWith,
  playerCalled,
  readsColumns,
  sourceOf,
} from "./project.ts";
import type { Preview, ReadOptions } from "./propose.ts";
import { unique } from "./unique.ts";
import type { ProposedSession, ProposedSource } from "./write.ts";

const PREVIEW_ROWS = 5;

/** How much of a text is looked at to understand it. */
const BEGINNING = 512 * 1024;

/** One table while it is read. */
export class FileProposal {
  readonly path: string;
  problem: string | undefined;
  table:
    | {
        readonly form: Form;
        readonly columns: readonly ProposedColumn[];
        readonly groups: Groups;
        /** The source of the project that reads it. */
        readonly known: DeclaredSource | undefined;
      }
    | undefined;
  readonly #options: ReadOptions;
  readonly #isKnown: (name: string) => boolean;
  /** The days that the column of times names, where no column holds dates. */
  readonly #days = new Set<string>();
  readonly #decoding = new TextDecoding();
  #held = "";
  #rest: DelimitedReader | JsonReader | undefined;
  #rows: StatisticRows<readonly string[]> | undefined;

  constructor(path: string, options: ReadOptions, isKnown: (name: string) => boolean) {
    this.path = path;
    this.#options = options;
    this.#isKnown = isKnown;
  }

  push(content: Uint8Array | string): void {
    this.#pushText(typeof content === "string" ? content : this.#decoding.push(content));
  }

  end(): void {
    this.#pushText(this.#decoding.end());
    if (this.table === undefined && this.problem === undefined) this.#begin(true);
    this.#rest?.end();
    this.#rows?.end();
    // A source that does not read what parts the table would give every session all the rows.
    const known = this.table?.known;
    if (this.table !== undefined && known !== undefined && !readsColumns(known, this.#partingHeaders()))
      this.table = { ...this.table, known: undefined };
  }

  /** The headers of the columns in which sessions of the table differ. */
  #partingHeaders(): string[] {
    const { columns, groups } = this.#understood();
    const found = groups.list();
    return (["player", "date", "session"] as const)
      .filter((kind) => new Set(found.map((group) => group[kind])).size > 1)
      .flatMap((kind) => columns.find(({ meaning }) => meaning?.kind === kind)?.header ?? []);
  }

  #pushText(text: string): void {
    if (this.problem !== undefined) return;
    if (this.#rest !== undefined) this.#rest.push(text);
    else {
      this.#held += text;
      if (this.#held.length >= BEGINNING) this.#begin(false);
    }
  }

  #begin(isWhole: boolean): void {
    const text = this.#held.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
    const ends = this.#held.endsWith("\r") ? text.slice(0, -1) : text;
    this.#held = "";
    const isTable = whyNoTable(text) === undefined;
    const form = isTable ? findForm(ends.slice(0, BEGINNING), isWhole, this.#isKnown) : undefined;
    if (form !== undefined && isOnItsSide(form, this.#isKnown)) {
      this.problem = ON_ITS_SIDE;
      return;
    }
    const { vocabulary, hand } = this.#options;
    const columns = form === undefined ? [] : proposeColumns(form, vocabulary, hand);
    if (form === undefined || columns.every(({ meaning }) => meaning === null)) {
      this.problem = whyNothing(text, form);
      return;
    }
    const placeOf = (kind: string) => {
      const place = columns.findIndex(
        ({ meaning, confidence }) => meaning?.kind === kind && confidence !== "doubtful",
      );
      return place < 0 ? undefined : place;
    };
    const groups = new Groups({
      player: placeOf("player"),
      date: placeOf("date"),
      session: placeOf("session"),
      block: placeOf("block"),
    });
    this.table = { form, columns, groups, known: sourceOf(form, columns, this.#options.project) };
    const times = columns.findIndex(({ meaning }) => meaning?.kind === "time");
    const time = placeOf("date") === undefined ? times : -1;
    this.#readRest(text, form, (cells) => {
      groups.add(cells);
      if (time >= 0 && this.#days.size < 2) this.#noteDay(cells[time] ?? "");
    });
  }

  /** Reads the whole table once more, from the header on, for the sessions in it. */
  #readRest(text: string, form: Form, add: (cells: readonly string[]) => void): void {
    const rows = new StatisticRows<readonly string[]>(
      (cells) => cells,
      add,
      () => {},
    );
    this.#rows = rows;
    const take = (cells: readonly string[]) => {
      if (firstText(cells) !== "" && !isRule(cells)) rows.push(cells);
    };
    const { parting } = form;
    if (parting === null) {
      this.#rest = new JsonReader(text, "point", {
        record: ({ cells }) => take(cells),
        unreadable: () => {},
      });
      this.#rest.push(text);
      return;
    }
    let left = form.units.length > 0 ? 2 : 1;
    this.#rest = recordReader(parting, 1, ({ line, cells }) => {
      if (line < form.headerRow) return;
      if (left > 0) left--;
      else if (!cells.every((cell, at) => cell.trim() === (form.names[at] ?? ""))) take(cells);
    });
    this.#rest.push(text);
  }

  #noteDay(text: string): void {
    const day = parseDate(text);
    if (day?.dayFirst !== undefined && day.dayFirst === day.monthFirst) this.#days.add(day.dayFirst);
  }

  source(): ProposedSource {
    const { form, groups, known } = this.#understood();
    const columns = this.#columns();
    const dates = groups.isOrderNeeded ? (groups.isMonthFirst ? "month-day-year" : "day-month-year") : null;
    return {
      name: known?.name ?? `${nameOf(this.path)} table`,
      known: known ?? null,
      form,
      columns: known === undefined ? columns : columnsBy(known, columns),
      orderedBy: orderOf(form, columns),
      dateOrder: dates,
      dateDoubt: groups.dateDoubt,
    };
  }

  sessions(source: string, taken: Set<string>): ProposedSession[] {
    const { groups } = this.#understood();
    const columns = this.#columns();
    const found = groups.list();
    const isParted = columns.some(
      ({ meaning }) => meaning?.kind === "player" || meaning?.kind === "date" || meaning?.kind === "session",
    );
    const data = [{ path: this.path, source }];
    const { player, plan, project } = this.#options;
    const plansOf = (blocks: ReadonlySet<string>) =>
      plan === null ? plansWith(blocks, project).map(({ name }) => name) : [plan];
    if (!isParted || found.length === 0) {
      const name = unique(nameOf(this.path), taken);
      taken.add(name);
      const [day = null] = this.#days.size === 1 ? this.#days : [];
      const plans = plansOf(new Set(found.flatMap(({ blocks }) => [...blocks])));
      return [{ name, player, plans, date: day, data, rows: null, isNamedInTable: false }];
    }
    return found.map((group) => {
      const who = group.player === null ? player : this.#playerOf(group.player);
      const rest = { player: who, plans: plansOf(group.blocks), date: group.date, data, rows: group.rows };
      if (group.session !== null) return { name: group.session, ...rest, isNamedInTable: true };
      const base = [nameOf(this.path), group.player === null ? null : who, group.date]
        .filter((part) => part !== null)
        .join(" ");
      const name = unique(base, taken);
      taken.add(name);
      return { name, ...rest, isNamedInTable: false };
    });
  }

  /** The columns, but for one of session names that are no names of one session each. */
  #columns(): readonly ProposedColumn[] {
    const { columns, groups } = this.#understood();
    if (groups.areSessionNamesUnique) return columns;
    const reasons = ["one session of it is of several players or days, who part the table better"];
    return columns.map((column) =>
      column.meaning?.kind === "session" ? { ...column, meaning: null, reasons, settle: [] } : column,
    );
  }

  preview(): Preview {
    const { form } = this.#understood();
    return {
      path: this.path,
      names: form.names,
      rows: form.rows.slice(0, PREVIEW_ROWS).map(({ cells }) => cells),
    };
  }

  /** A player of the project who is called so, else the text itself. */
  #playerOf(text: string): string {
    return playerCalled(text, this.#options.project)?.name ?? text;
  }

  #understood(): NonNullable<FileProposal["table"]> {
    if (this.table === undefined) throw new Error("Nothing was understood of this file.");
    return this.table;
  }
}

const ON_ITS_SIDE =
  "The names stand under each other in the first column, and the shots side by side. Turn a copy of the table, so that the names stand in one line with the shots under it, and name that file.";

/** Whether the names stand in the first column rather than in a line. */
function isOnItsSide({ names, rows }: Form, isKnown: (name: string) => boolean): boolean {
  const [first = "", ...others] = names;
  const under = [first, ...rows.map(({ cells }) => cells[0] ?? "")];
  return others.length > 0 && !others.some(isKnown) && under.filter(isKnown).length > 1;
}

function whyNothing(text: string, form: Form | undefined): string {
  if (text.trim() === "") return "The file is empty. Export the shots again, or leave the file out.";
  const why = text.includes("\0") ? whyBinary(text) : whyNoTable(text);
  if (why !== undefined) return why;
  if (/^\s*[[{]/.test(text) && (form === undefined || form.separator !== null))
    return "This looks like JSON, but holds no list of shots. Expected is an array of objects, or one object on each line, in which every reading has a name; one with equally long lists of readings, each with a name; or a list of names, and under it a list for each shot.";
  if (form === undefined)
    return "This is no table of text: no line looks like column names with rows under it. Export the shots as CSV and name that file.";
  const { headerRow, names } = form;
  const cells = names.join(";").split(/[,;\t|]/);
  if (cells.filter((cell) => /^\s*[-+]?\d/.test(cell)).length >= 0.5 * cells.length)
    return `Line ${headerRow} holds readings, and no line above it names the columns. Write a line of names above them, such as Club, Carry (yd), Club path (°).`;
  const parting =
    names.length === 1 && form.separator !== null
      ? " Neither comma, semicolon, tab nor | seems to stand between the cells."
      : "";
  return `No column is known to mean anything. The column names were taken from line ${headerRow}: ${names
    .slice(0, 12)
    .map(quote)
    .join(
      ", ",
    )}.${parting} If the names stand further down, delete what is above them in a copy of the table; if one of these is a metric, declare a source that says so: \`column "…" is carry in m\`.`;
}

/** `p-07-visit` of `../data/p-07-visit.csv.gz` */
function nameOf(path: string): string {
  const file = path.split(/[\\/]/).at(-1) ?? path;
  return file.replace(/\.(?:csv|tsv|txt|jsonl?|ndjson|gz)(?=\.|$)/gi, "") || file;
}

/** The column of shot numbers, or else of times, where the rows do not stand in their order. */
function orderOf({ rows, decimal }: Form, columns: readonly ProposedColumn[]): string | null {
  const readings = [
    { kind: "order", read: (text: string) => parseNumber(text, decimal) },
    { kind: "time", read: (text: string) => moment(text) ?? clockOf(text) },
    { kind: "date", read: moment },
  ];
  for (const { kind, read } of readings) {
    const place = columns.findIndex(({ meaning }) => meaning?.kind === kind);
    if (place < 0) continue;
    const keys = rows
      .map(({ cells }) => (cells[place] ?? "").trim())
      .filter((text) => !isBlank(text))
      .map(read);
    const known = keys.filter((key) => key !== undefined);
    if (known.length < 3 || known.length < 0.9 * keys.length) continue;
    const falls = known.slice(1).filter((key, at) => key < (known[at] ?? key)).length;
    // A column that starts again and again counts within something; it orders nothing.
    return falls >= 0.8 * (known.length - 1) ? (columns[place]?.header ?? null) : null;
  }
  return null;
}
