/** A copy of a table in which players have codes instead of names. */
import { csvLine } from "../../../shared/csv.ts";
import { parseNumber } from "../cells/number.ts";
import type { ProposedColumn } from "../propose/columns.ts";
import type { Form } from "../propose/form.ts";
import { TextDecoding } from "../table/decode.ts";
import type { DelimitedReader } from "../table/delimited.ts";
import { JsonReader } from "../table/json.ts";
import { recordReader, SEPARATORS } from "../table/separators.ts";
import { firstText, StatisticRows } from "../table/statistics.ts";
import type { PlayerCodes } from "./codes.ts";

/** No reading is so large: it is a telephone number, or a number that somebody is known by. */
const NO_READING = 1e7;

/**
 * Writes a table once more, piece by piece, as delimited text in UTF-8: the column names and what is under them, with the
 * players' column in codes, every name that has a code replaced wherever else it stands, parts of names too where sessions
 * are named, and no cell that a spreadsheet would run. Left out, since names, addresses and numbers of people may be there:
 * what stands above the column names, and what is no reading in a column of which it is not known what it is.
 */
export class CodedCopy {
  readonly #codes: PlayerCodes;
  /** What each column is taken for; null where that is not known. */
  readonly #kinds: readonly (string | null)[];
  /** The headers of columns in which something was left out. */
  readonly #thinned = new Set<string>();
  readonly #names: readonly string[];
  readonly #separator: string;
  readonly #decoding = new TextDecoding();
  readonly #reader: DelimitedReader | undefined;
  #json: JsonReader | undefined;
  readonly #decimal: Form["decimal"];
  /** What a statistic is called is no player's name. */
  readonly #rows = new StatisticRows<readonly string[]>(
    (cells) => cells,
    (cells) => this.#write(this.#coded(cells, "")),
    (cells) => this.#write(this.#coded(cells, firstText(cells))),
  );
  #lines: string[] = [];

  constructor(
    { separator, parting, headerRow, names, decimal }: Form,
    columns: readonly Pick<ProposedColumn, "meaning">[],
    codes: PlayerCodes,
  ) {
    this.#codes = codes;
    this.#kinds = columns.map(({ meaning }) => meaning?.kind ?? null);
    this.#names = names;
    this.#decimal = decimal;
    this.#separator = separator === null || separator === "spaces" ? "," : SEPARATORS[separator];
    if (parting === null) this.#write(names);
    else {
      this.#reader = recordReader(parting, 1, ({ line, cells }) => {
        if (line === headerRow) this.#write(cells);
        else if (line > headerRow) this.#rows.push(cells);
      });
    }
  }

  /** What the copy goes on with. */
  push(bytes: Uint8Array): string {
    return this.#pushText(this.#decoding.push(bytes));
  }

  /** The end of the copy. */
  end(): string {
    const text = this.#pushText(this.#decoding.end());
    this.#reader?.end();
    this.#json?.end();
    this.#rows.end();
    return text + this.#taken();
  }

  #pushText(text: string): string {
    const plain = text.replace(/^\uFEFF/, "");
    if (this.#reader !== undefined) this.#reader.push(plain);
    else if (plain !== "") {
      this.#json ??= new JsonReader(plain, this.#decimal, {
        record: ({ cells }) => void this.#rows.push(this.#names.map((_, place) => cells[place] ?? "")),
        unreadable: () => {},
      });
      this.#json.push(plain);
    }
    return this.#taken();
  }

  /** The headers of the columns in which something was left out, in their order. */
  get thinned(): readonly string[] {
    return this.#names.filter((name) => this.#thinned.has(name));
  }

  #coded(cells: readonly string[], statistic: string): string[] {
    return cells.map((cell, place) => {
      if (cell.trim() === statistic || cell.trim() === "") return cell;
      switch (this.#kinds[place] ?? null) {
        case "player":
          return this.#codes.codeOf(cell);
        case "session":
          return this.#codes.replacePartsIn(cell);
        case "metric":
        case "order": // a number is no player there, even where players are numbers
          return this.#isReading(cell) ? cell : this.#codes.replaceIn(cell);
        case null:
          if (this.#isReading(cell)) return cell;
          this.#thinned.add(this.#names[place] ?? "");
          return "";
        default:
          return this.#codes.replaceIn(cell);
      }
    });
  }

  #isReading(cell: string): boolean {
    return Math.abs(parseNumber(cell, this.#decimal) ?? NO_READING) < NO_READING;
  }

  #write(cells: readonly string[]): void {
    this.#lines.push(`${csvLine(cells, this.#separator)}\n`);
  }

  #taken(): string {
    const text = this.#lines.join("");
    this.#lines = [];
    return text;
  }
}
