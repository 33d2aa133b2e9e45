/**
 * Numbers as tables write them.
 *
 * A number is, in this order and with nothing else around it but white space:
 * - a sign or none: `+`, `-`, the minus sign U+2212 or an en dash, with or without a space after it
 * - digits, plain (`1234`) or in groups of three after a first group of one to three that does not begin with zero
 *   (`1 234`, `12'345`). All groups of a number are parted by the same mark: the one that is stated; where none is, a space
 *   (also no-break, narrow no-break, thin or figure space), an apostrophe (straight or curled), or the one of comma and
 *   point that is not the decimal mark
 * - decimals or none: the decimal mark and digits. Either the digits before or those after the mark may be missing,
 *   not both (`.5`, `5.`)
 * - an exponent or none: `e` or `E`, a sign or none, digits
 *
 * So where decimals stand after a point, `1,234` is 1234, and `1,23`, `0,123` and `12,34,567` are no numbers: whoever
 * meant a decimal comma is told, rather than given a wrong number. `NaN`, `Infinity`, hexadecimal numbers, fractions
 * and numbers too large to represent are no numbers either.
 */
export type DecimalMark = "comma" | "point";
export type ThousandsMark = "comma" | "point" | "space" | "apostrophe";

const SIGN = String.raw`(?<sign>[+\-−–])?\s?`;
const MARKS: Record<ThousandsMark, string> = {
  comma: ",",
  point: ".",
  space: String.raw`\x20\xa0\u2007\u2009\u202f`,
  apostrophe: "'’",
};

function pattern(decimal: DecimalMark, thousands: ThousandsMark | null): RegExp {
  const other = decimal === "comma" ? "point" : "comma";
  const any = MARKS.space + MARKS.apostrophe + MARKS[other];
  const between = thousands === null || thousands === decimal ? any : MARKS[thousands];
  const mark = decimal === "comma" ? "," : String.raw`\.`;
  const grouped = String.raw`[1-9]\d{0,2}(?:(?<mark>[${between}])\d{3}(?:\k<mark>\d{3})*)`;
  const whole = String.raw`(?<whole>${grouped}|\d+)`;
  const decimals = String.raw`(?:${mark}(?<decimals>\d*))`;
  const onlyDecimals = String.raw`${mark}(?<only>\d+)`;
  return new RegExp(
    String.raw`^${SIGN}(?:${whole}${decimals}?|${onlyDecimals})(?<exponent>e[+-]?\d+)?$`,
    "iu",
  );
}

const patterns = new Map<string, RegExp>();

function patternFor(decimal: DecimalMark, thousands: ThousandsMark | null): RegExp {
  const key = `${decimal} ${thousands}`;
  let found = patterns.get(key);
  if (found === undefined) {
    found = pattern(decimal, thousands);
    patterns.set(key, found);
  }
  return found;
}

/** What most cells are: digits with one decimal mark or none. */
const PLAIN: Record<DecimalMark, RegExp> = { point: /^-?\d+(?:\.\d+)?$/, comma: /^-?\d+(?:,\d+)?$/ };

/** The number that `text` is (see above), or undefined where it is none. Never negative zero. */
export function parseNumber(
  text: string,
  decimal: DecimalMark,
  thousands: ThousandsMark | null = null,
): number | undefined {
  const trimmed = text.trim();
  const value = PLAIN[decimal].test(trimmed)
    ? Number(decimal === "comma" ? trimmed.replace(",", ".") : trimmed)
    : parsePattern(trimmed, patternFor(decimal, thousands));
  if (value === undefined || !Number.isFinite(value)) return undefined;
  return value === 0 ? 0 : value;
}

function parsePattern(text: string, pattern: RegExp): number | undefined {
  const found = pattern.exec(text)?.groups;
  if (found === undefined) return undefined;
  const whole = (found.whole ?? "").replace(/\D/g, "");
  const decimals = found.decimals ?? found.only ?? "";
  const size = Number(`${whole || "0"}.${decimals || "0"}${found.exponent ?? ""}`);
  return found.sign === undefined || found.sign === "+" ? size : -size;
}

/**
 * The text as it is meant to be seen: without marks that nobody sees (a soft hyphen may be a minus, and stays), quotation
 * marks around it and the apostrophe by which a spreadsheet is told that it is text; with digits and marks of full width, as
 * East Asian keyboards write them, as all others.
 */
export function plainText(text: string): string {
  const visible = text
    .replace(/(?!\u00ad)\p{Cf}/gu, "")
    .replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .trim();
  const quoted = /^(?:'([^'"]*)'|"([^'"]*)"|[“„]([^“”„]*)[”“]|[‘‚]([^‘’‚]*)[’‘]|«([^«»]*)»|'([^'"]*))$/.exec(
    visible,
  );
  return quoted === null ? visible : (quoted.slice(1).find((inside) => inside !== undefined) ?? "").trim();
}

/** How many digits stand behind the decimal mark of a number that was read; one with an exponent is taken to have none. */
export function decimalsOf(text: string, decimal: DecimalMark): number {
  const mark = text.lastIndexOf(decimal === "comma" ? "," : ".");
  if (mark < 0) return 0;
  let end = mark + 1;
  while (end < text.length && text.charCodeAt(end) >= 0x30 && text.charCodeAt(end) <= 0x39) end++;
  return end < text.length && /[eE]/.test(text[end] ?? "") ? 0 : end - mark - 1;
}

/** Empty, white space, or only dashes: a cell in which nothing was measured. */
export function isBlank(text: string): boolean {
  return /^[\s\-‐‑‒–—−]*$/.test(text);
}
