/** The part of csv-parse that is used here. Its own declarations would bring the types of Node into a pure project. */

export interface Options {
  delimiter: string;
  record_delimiter: string;
  /** Rows may have more or fewer cells than the first. */
  relax_column_count: true;
  /** A quotation mark inside an unquoted cell is a character like any other. */
  relax_quotes: true;
  /** White space between a separator and an opening quotation mark is dropped. */
  ltrim: true;
  /** Stop after so many records. */
  to?: number;
}

export function parse(text: string, options: Options): string[][];

export class CsvError extends Error {
  readonly code: string;
  /** How many records were complete when the error was met. */
  readonly records: number;
  /** The cell in which it was met, from 0. */
  readonly column: number;
}
