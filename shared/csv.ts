/** Tables that spreadsheets can open without harm. */

/** What a spreadsheet takes for the beginning of a formula, the wide forms of East Asian text included. */
const BEGINS_FORMULA = /^[\s'"]*[=+\-@\t\r\uFF1D\uFF0B\uFF0D\uFF20]/;
/** A number may begin with a sign: nothing is computed from it. */
const NUMBER = /^\s*[+-]?\s?(?:\d[\d.,'’ \u00a0\u202f]*|[.,]\d+)(?:e[+-]?\d+)?\s?%?\s*$/i;

/**
 * A text that no spreadsheet runs: what would be a formula gets an apostrophe in front, which spreadsheets show as text.
 * Numbers stay as they are.
 */
export function harmless(text: string): string {
  return BEGINS_FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text;
}

/** One line of a delimited table (RFC 4180), without its end, every cell harmless. */
export function csvLine(cells: readonly string[], separator = ","): string {
  return cells.map((cell) => quotedCell(harmless(cell), separator)).join(separator);
}

function quotedCell(text: string, separator: string): string {
  const isPlain = !text.includes(separator) && !/["\r\n]/.test(text) && text === text.trim();
  return isPlain ? text : `"${text.replaceAll('"', '""')}"`;
}
