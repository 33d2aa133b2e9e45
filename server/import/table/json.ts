/** From JSON text that arrives in pieces to the records of a table: nested keys are names such as `club.path`. */
import { LONGEST_RECORD } from "./delimited.ts";
import { columnsOf, type JsonColumns, linesOfItems } from "./json-columns.ts";

/** One record. `line` is the line of the file on which it begins, from 1. Cells that are missing are blank. */
export interface JsonRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface JsonSink {
  record(record: JsonRecord): void;
  /** A piece that is no JSON, or no object; reading goes on behind it. */
  unreadable(line: number, text: string): void;
}

/** Why nothing more can be read: what begins in `line` never ends, or `why` in words. */
export interface BrokenJson {
  readonly line: number;
  readonly why?: string;
}

/** Whether a text is JSON rather than a delimited table: a list of objects or of lists, or an object, begins it. */
export function looksLikeJson(text: string): boolean {
  return /^\s*(?:\[\s*[{[\]]|\{\s*["}])/.test(text);
}

/** How much text is held at most: one object around all shots is. */
const MOST_HELD = 16 * LONGEST_RECORD;

const [LINE_FEED, QUOTE, BRACKET, BACKSLASH, BRACE] = [10, 34, 91, 92, 123] as const;

/** How deep keys are joined; what lies deeper, or is a list, is one text. */
const DEEPEST = 6;

/**
 * Reads an array of objects, lines of one object each (JSON Lines), one object in which the only list of objects holds the
 * shots, or one with a list for each column. A shot may be a list, too, where a list of names stands above it or beside its
 * like. A record is given out when its last bracket has arrived; `names` grows as new keys are met, and cells stand in its
 * order. Numbers are written with the decimal mark given. Linear; holds one piece and one record, but for one object
 * around the shots or the columns, which is held as a whole.
 */
export class JsonReader {
  readonly names: string[] = [];
  broken: BrokenJson | undefined;
  readonly #places = new Map<string, number>();
  readonly #decimalMark: string;
  readonly #sink: JsonSink;
  readonly #isArray: boolean;
  #text = "";
  #line = 1;
  /** How far `#text` was looked at, and the brackets that are open there. */
  #at = 0;
  #open: number[] = [];
  #inString = false;
  /** How many brackets are open around a record; where the one that is being read begins, or -1. */
  #around = 1;
  #start = -1;
  #startLine = 1;
  /** What a record begins with: a brace, or the bracket of a list; not known yet where undefined. */
  #first: typeof BRACE | typeof BRACKET | undefined;
  /** What was found out about a text that begins with an object: lines of objects, or one object; not yet, where undefined. */
  #isLines: boolean | undefined;

  /**
   * `beginning` is the first text of the file, which is pushed all the same: it tells a list from lines. `from`: what is pushed
   * begins at a line of JSON Lines further down, above which these names were met.
   */
  constructor(
    beginning: string,
    decimal: "comma" | "point",
    sink: JsonSink,
    from?: { readonly line: number; readonly names: readonly string[] },
  ) {
    if (from !== undefined) {
      this.#isLines = true;
      this.#line = from.line;
      for (const name of from.names) this.#placeOf(name);
    }
    this.#decimalMark = decimal === "comma" ? "," : ".";
    this.#sink = sink;
    this.#isArray = /^\s*\[/.test(beginning);
  }

  /** Whether each record is a line of its own, as far as that is known. */
  get isOfLines(): boolean {
    return this.#isLines === true;
  }

  push(piece: string): void {
    if (this.broken !== undefined) return;
    this.#text += piece;
    if (this.#isArray) this.#scan();
    else this.#takeLines(false);
    if (this.#text.length > MOST_HELD) this.broken = { line: this.#startLine };
  }

  end(): void {
    if (this.broken !== undefined) return;
    if (!this.#isArray) this.#takeLines(true);
    if (this.#isLines === false) this.#takeWhole();
    else if (this.#open.length > 1) this.broken = { line: this.#startLine };
  }

  #takeLines(isLast: boolean): void {
    this.#isLines ??= areLines(this.#text, isLast);
    if (this.#isLines !== true) return;
    let start = 0;
    while (start < this.#text.length) {
      const feed = this.#text.indexOf("\n", start);
      if (feed < 0 && !isLast) break;
      const end = feed < 0 ? this.#text.length : feed;
      const line = this.#text.slice(start, end).trim();
      if (line !== "") this.#give(parsed(line), this.#line, line);
      start = end + 1;
      this.#line++;
    }
    this.#text = this.#text.slice(start);
  }

  /** The list in one object, or the columns; else the object itself is the only record. */
  #takeWhole(): void {
    const value = parsed(this.#text);
    const around = isObject(value) ? aroundShots(value) : undefined;
    const lists = isObject(value) && around === undefined ? aroundLists(value) : undefined;
    if (around !== undefined) {
      this.#around = around;
      this.#first = BRACE;
      this.#scan();
    } else if (lists !== undefined) {
      this.#around = lists.around;
      this.#first = BRACKET;
      this.names.push(...lists.names);
      this.#scan();
    } else if (isObject(value)) {
      const columns = columnsOf(value);
      if (columns === undefined) this.#give(value, 1, "");
      else if (typeof columns === "string") this.broken = { line: 1, why: columns };
      else this.#giveRows(columns);
    } else this.broken = { line: 1 };
  }

  #giveRows(columns: JsonColumns): void {
    const places = [...columns.keys()].map((name) => this.#placeOf(name));
    const lists = [...columns.values()];
    for (const [row, line] of linesOfItems(this.#text, lists[0]?.length ?? 0).entries()) {
      const cells: string[] = [];
      for (const [at, place] of places.entries()) cells[place] = this.#written(lists[at]?.[row] ?? null);
      this.#sink.record({ line, cells });
    }
  }

  /** Finds the objects, or the lists, that stand in a list with so many brackets around them. */
  #scan(): void {
    const text = this.#text;
    for (; this.#at < text.length; this.#at++) {
      const code = text.charCodeAt(this.#at);
      if (code === LINE_FEED) this.#line++;
      if (this.#inString) {
        if (code === BACKSLASH) {
          if (this.#at + 1 === text.length) break; // what is escaped has not arrived
          this.#at++;
        } else if (code === QUOTE) this.#inString = false;
      } else if (code === QUOTE) this.#inString = true;
      else if (code === BRACE || code === BRACKET) this.#openAt(code);
      else if (code === BRACE + 2 || code === BRACKET + 2) this.#closeAt(text);
    }
    const keep = this.#start >= 0 ? this.#start : this.#at;
    this.#text = text.slice(keep);
    this.#at -= keep;
    if (this.#start >= 0) this.#start = 0;
  }

  #openAt(code: typeof BRACE | typeof BRACKET): void {
    if (this.#open.length === this.#around && this.#open.at(-1) === BRACKET) {
      this.#first ??= code;
      if (code !== this.#first) {
        this.#open.push(code);
        return;
      }
      this.#start = this.#at;
      this.#startLine = this.#line;
    }
    this.#open.push(code);
  }

  #closeAt(text: string): void {
    this.#open.pop();
    if (this.#start < 0 || this.#open.length !== this.#around) return;
    const record = text.slice(this.#start, this.#at + 1);
    this.#start = -1;
    this.#give(parsed(record), this.#startLine, record);
  }

  #give(value: unknown, line: number, text: string): void {
    if (Array.isArray(value) && this.#first === BRACKET) {
      this.#giveList(value, line, text);
      return;
    }
    if (!isObject(value)) {
      this.#sink.unreadable(line, text);
      return;
    }
    const cells: string[] = [];
    this.#fill(cells, value, "", 0);
    for (let place = 0; place < cells.length; place++) cells[place] ??= "";
    this.#sink.record({ line, cells });
  }

  /** The first list holds the names where no others are known. One that is longer than the names says nothing of itself. */
  #giveList(items: readonly unknown[], line: number, text: string): void {
    if (this.names.length === 0) {
      if (areNames(items)) this.names.push(...items);
      else this.broken = { line, why: "nothing names what stands in its lists" };
    } else if (items.length > this.names.length) this.#sink.unreadable(line, text);
    else {
      const cells = this.names.map((_, place) => this.#written(items[place] ?? null));
      this.#sink.record({ line, cells });
    }
  }

  #fill(cells: string[], value: object, prefix: string, depth: number): void {
    for (const [key, member] of Object.entries(value)) {
      const name = prefix + key;
      if (isObject(member) && depth < DEEPEST) this.#fill(cells, member, `${name}.`, depth + 1);
      else cells[this.#placeOf(name)] = this.#written(member);
    }
  }

  #placeOf(name: string): number {
    let place = this.#places.get(name);
    if (place === undefined) {
      place = this.names.length;
      this.names.push(name);
      this.#places.set(name, place);
    }
    return place;
  }

  #written(value: unknown): string {
    if (typeof value === "string") return value;
    if (typeof value === "number") return String(value).replace(".", this.#decimalMark);
    return value === null ? "" : JSON.stringify(value);
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** True where the first line is an object of its own; undefined while that cannot be told. */
function areLines(text: string, isLast: boolean): boolean | undefined {
  const beginning = text.trimStart();
  const feed = beginning.indexOf("\n");
  if (feed < 0 && !isLast) return undefined;
  const first = parsed(feed < 0 ? beginning : beginning.slice(0, feed));
  if (!isObject(first)) return false;
  // One object around a list of shots, or of columns, may stand on one line: then no other follows.
  const isTable = [aroundShots, aroundLists, columnsOf].some((find) => find(first) !== undefined);
  if (!isTable) return true;
  const isAlone = feed < 0 || beginning.slice(feed).trim() === "";
  return isAlone ? (isLast ? false : undefined) : true;
}

/** How many brackets stand around the shots in the only list of objects; undefined where there is none, or several. */
function aroundShots(value: object, depth = 1): number | undefined {
  const found = Object.values(value).flatMap((member: unknown) => {
    if (Array.isArray(member)) return member.some(isObject) ? [depth + 1] : [];
    return isObject(member) && depth < 2 ? (aroundShots(member, depth + 1) ?? []) : [];
  });
  return found.length === 1 ? found[0] : undefined;
}

/**
 * The names, and how many brackets stand around each list, where shots are lists: in the only list of lists, with as many
 * names in the only list that fits it, or with the names first.
 */
function aroundLists(value: object): { names: readonly string[]; around: number } | undefined {
  const lists = listsIn(value, 1);
  const rows = lists.filter(({ items }) => items.length > 0 && items.every((item) => Array.isArray(item)));
  const [only] = rows;
  const first: unknown = only?.items[0];
  if (only === undefined || rows.length > 1 || !Array.isArray(first)) return undefined;
  const named = lists.flatMap(({ items }) =>
    items.length === first.length && areNames(items) ? [items] : [],
  );
  const [names] = named;
  if (named.length > 1 || (names === undefined && !areNames(first))) return undefined;
  return { names: names ?? [], around: only.around };
}

function listsIn(value: object, depth: number): { items: readonly unknown[]; around: number }[] {
  return Object.values(value).flatMap((member: unknown) => {
    if (Array.isArray(member)) return [{ items: member, around: depth + 1 }];
    return isObject(member) && depth < 2 ? listsIn(member, depth + 1) : [];
  });
}

/** Whether a list holds nothing but texts, of which one or more are words. */
function areNames(items: readonly unknown[]): items is readonly string[] {
  const texts = items.filter((item) => typeof item === "string");
  return texts.length === items.length && texts.some((text) => /\p{L}/u.test(text));
}
