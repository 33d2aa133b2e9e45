/** From text that arrives in pieces to the records of a delimited table. */

/** One record. `line` is the line of the file on which it begins, from 1; `height` how many lines it stands on. */
export interface TableRecord {
  readonly line: number;
  readonly height: number;
  readonly cells: readonly string[];
}

/** No record of a table is longer, in UTF-16 units: a quotation mark that is never closed would swallow the whole file. */
export const LONGEST_RECORD = 4_000_000;

/** Why reading cannot go on: the record begins in `line`, and what is wrong with it is in its cell `column`, from 0. */
export interface BrokenRecord {
  readonly reason: "quote-never-closed" | "too-long";
  readonly line: number;
  readonly column: number;
}

/**
 * Splits records as RFC 4180 describes them, and a little beyond: any one-character separator; lines that end in LF, CRLF
 * or CR; white space between a separator and an opening quotation mark is dropped; a quotation mark inside an unquoted
 * cell, and a quoted cell that other text follows, are text as they stand, but for `="082"`, which is the text 082: so
 * programs tell a spreadsheet to keep it as it is. The last line need not end.
 *
 * A record is given out when its line end has arrived, so that a file can be read while it is being written. Linear in the
 * length of the text, holding no more of it than one piece and one record.
 */
export class DelimitedReader {
  /** Set when a record cannot be read; nothing is read any more. */
  broken: BrokenRecord | undefined;
  readonly #separator: string;
  readonly #take: (record: TableRecord) => void;
  #line: number;
  /** Text of which no record was made yet, line ends as LF. */
  #text = "";
  /** A CR at the end of a piece: an LF that follows belongs to it. */
  #carriageReturn = false;

  constructor(separator: string, firstLine: number, take: (record: TableRecord) => void) {
    this.#separator = separator;
    this.#line = firstLine;
    this.#take = take;
  }

  push(piece: string): void {
    if (this.broken !== undefined || piece === "") return;
    this.#text += this.#withLineFeeds(piece);
    this.#split(false);
    if (this.#text.length > LONGEST_RECORD) this.#break("too-long", 0);
  }

  /** Nothing more will arrive: what is left is the last record. */
  end(): void {
    if (this.broken !== undefined) return;
    if (this.#carriageReturn) this.#text += "\n";
    this.#carriageReturn = false;
    this.#split(true);
  }

  #withLineFeeds(piece: string): string {
    let text = piece;
    if (this.#carriageReturn) text = text.startsWith("\n") ? text : `\n${text}`;
    this.#carriageReturn = text.endsWith("\r");
    if (this.#carriageReturn) text = text.slice(0, -1);
    return text.includes("\r") ? text.replace(/\r\n?/g, "\n") : text;
  }

  #split(isLast: boolean): void {
    const text = this.#text;
    let at = 0;
    let quote = text.indexOf('"');
    while (at < text.length && this.broken === undefined) {
      const end = text.indexOf("\n", at);
      if (end < 0 && !isLast) break;
      const lineEnd = end < 0 ? text.length : end;
      if (quote >= 0 && quote < at) quote = text.indexOf('"', at);
      if (quote < 0 || quote > lineEnd) {
        this.#give(text.slice(at, lineEnd).split(this.#separator), 1);
        at = lineEnd + 1;
      } else {
        const next = this.#quotedRecord(at, isLast);
        if (next === undefined) break;
        at = next;
      }
    }
    this.#text = this.broken === undefined ? text.slice(at) : "";
  }

  #give(cells: readonly string[], height: number): void {
    const line = this.#line;
    this.#line += height;
    this.#take({ line, height, cells });
  }

  #break(reason: BrokenRecord["reason"], column: number): void {
    this.broken = { reason, line: this.#line, column };
    this.#text = "";
  }

  /** Reads a record that holds a quotation mark. Where the next one begins; undefined where its end has not arrived. */
  #quotedRecord(start: number, isLast: boolean): number | undefined {
    const text = this.#text;
    const cells: string[] = [];
    let height = 1;
    for (let at = start; ; at++) {
      const cell = cellAt(text, at, this.#separator, isLast);
      if (cell === undefined) return undefined;
      if (cell === "never-closed") {
        this.#break("quote-never-closed", cells.length);
        return undefined;
      }
      cells.push(asShown(cell.value));
      height += cell.lineFeeds;
      at = cell.end;
      if (text[at] !== this.#separator) {
        if (at === text.length && !isLast) return undefined;
        this.#give(cells, height);
        return at + 1;
      }
    }
  }
}

interface Cell {
  readonly value: string;
  /** Where the separator or line feed behind it stands. */
  readonly end: number;
  readonly lineFeeds: number;
}

/** Undefined where the end of a quoted cell has not arrived. */
function cellAt(
  text: string,
  start: number,
  separator: string,
  isLast: boolean,
): Cell | "never-closed" | undefined {
  const opening = afterSpaces(text, start, separator);
  if (text[opening] !== '"') {
    const end = cellEnd(text, start, separator);
    return { value: text.slice(start, end), end, lineFeeds: 0 };
  }
  let value = "";
  for (let from = opening + 1; ; ) {
    const closing = text.indexOf('"', from);
    if (closing < 0) return isLast ? "never-closed" : undefined;
    if (closing + 1 === text.length && !isLast) return undefined; // another may follow it
    value += text.slice(from, closing);
    from = closing + 2;
    if (text[closing + 1] === '"') {
      value += '"';
      continue;
    }
    const behind = afterSpaces(text, closing + 1, separator);
    if (behind === text.length || text[behind] === separator || text[behind] === "\n") {
      return { value, end: behind, lineFeeds: lineFeedsIn(value) };
    }
    const end = cellEnd(text, behind, separator);
    const asItStands = text.slice(opening, end);
    return { value: asItStands, end, lineFeeds: lineFeedsIn(asItStands) };
  }
}

/** What a spreadsheet shows: the text of a formula that is nothing but a text. */
function asShown(cell: string): string {
  const formula = /^\s*="((?:[^"]|"")*)"\s*$/.exec(cell)?.[1];
  return formula === undefined ? cell : formula.replaceAll('""', '"');
}

function afterSpaces(text: string, start: number, separator: string): number {
  let at = start;
  while ((text[at] === " " || text[at] === "\t" || text[at] === "\u00a0") && text[at] !== separator) at++;
  return at;
}

/** Where an unquoted cell ends. */
function cellEnd(text: string, start: number, separator: string): number {
  let at = start;
  while (at < text.length && text[at] !== separator && text[at] !== "\n") at++;
  return at;
}

function lineFeedsIn(text: string): number {
  let count = 0;
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) count++;
  return count;
}

/** The records of a whole text, and what keeps the rest of it from being read. */
export function splitText(
  text: string,
  separator: string,
): { records: TableRecord[]; broken: BrokenRecord | undefined } {
  const records: TableRecord[] = [];
  const reader = new DelimitedReader(separator, 1, (record) => records.push(record));
  reader.push(text);
  reader.end();
  return { records, broken: reader.broken };
}
