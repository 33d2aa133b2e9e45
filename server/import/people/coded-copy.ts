/** A copy of a table in which players have codes instead of names. */
import { csvLine } from "../../../shared/csv.ts";
import type { Form } from "../propose/form.ts";
import { TextDecoding } from "../table/decode.ts";
import { DelimitedReader } from "../table/delimited.ts";
import { JsonReader } from "../table/json.ts";
import { SEPARATORS } from "../table/separators.ts";
import type { PlayerCodes } from "./codes.ts";

/**
 * Writes a table once more, piece by piece, as delimited text in UTF-8: the column names and what is under them, with the
 * players' column in codes, every name that has a code replaced wherever else it stands, and no cell that a spreadsheet
 * would run. What stands above the column names is left out, since a name may be there.
 */
export class CodedCopy {
  readonly #codes: PlayerCodes;
  readonly #player: number;
  readonly #names: readonly string[];
  readonly #separator: string;
  readonly #decoding = new TextDecoding();
  readonly #reader: DelimitedReader | undefined;
  #json: JsonReader | undefined;
  readonly #decimal: Form["decimal"];
  #lines: string[] = [];

  /** `player` is the place of the players' column, from 0. */
  constructor({ separator, headerRow, names, decimal }: Form, player: number, codes: PlayerCodes) {
    this.#codes = codes;
    this.#player = player;
    this.#names = names;
    this.#decimal = decimal;
    this.#separator = separator === null ? "," : SEPARATORS[separator];
    if (separator === null) this.#write(names);
    else {
      this.#reader = new DelimitedReader(SEPARATORS[separator], 1, ({ line, cells }) => {
        if (line >= headerRow) this.#write(line === headerRow ? cells : this.#coded(cells));
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
    return text + this.#taken();
  }

  #pushText(text: string): string {
    const plain = text.replace(/^\uFEFF/, "");
    if (this.#reader !== undefined) this.#reader.push(plain);
    else if (plain !== "") {
      this.#json ??= new JsonReader(plain, this.#decimal, {
        record: ({ cells }) => this.#write(this.#coded(this.#names.map((_, place) => cells[place] ?? ""))),
        unreadable: () => {},
      });
      this.#json.push(plain);
    }
    return this.#taken();
  }

  #coded(cells: readonly string[]): string[] {
    return cells.map((cell, place) =>
      place === this.#player && cell.trim() !== "" ? this.#codes.codeOf(cell) : this.#codes.replaceIn(cell),
    );
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
