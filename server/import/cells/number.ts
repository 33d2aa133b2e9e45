/**
 * Numbers as tables write them.
 *
 * A number is, in this order and with nothing else around it but white space:
 * - a sign or none: `+`, `-`, the minus sign U+2212 or an en dash, with or without a space after it
 * - digits, plain (`1234`) or in groups of three after a first group of one to three that does not begin with zero
 *   (`1 234`, `12'345`). All groups of a number are parted by the same mark: a space (also no-break, narrow no-break,
 *   thin or figure space), an apostrophe (straight or curled), or the one of comma and point that is not the decimal mark
 * - decimals or none: the decimal mark and digits. Either the digits before or those after the mark may be missing,
 *   not both (`.5`, `5.`)
 * - an exponent or none: `e` or `E`, a sign or none, digits
 *
 * So where decimals stand after a point, `1,234` is 1234, and `1,23`, `0,123` and `12,34,567` are no numbers: whoever
 * meant a decimal comma is told, rather than given a wrong number. `NaN`, `Infinity`, hexadecimal numbers, fractions
 * and numbers too large to represent are no numbers either.
 */
export type DecimalMark = "comma" | "point";

const SIGN = String.raw`(?<sign>[+\-−–])?\s?`;
const SPACES_AND_APOSTROPHES = String.raw`\x20\xa0\u2007\u2009\u202f'’`;

function pattern(decimalMark: string, otherMark: string): RegExp {
  const grouped = String.raw`[1-9]\d{0,2}(?:(?<mark>[${SPACES_AND_APOSTROPHES}${otherMark}])\d{3}(?:\k<mark>\d{3})*)`;
  const whole = String.raw`(?<whole>${grouped}|\d+)`;
  const decimals = String.raw`(?:${decimalMark}(?<decimals>\d*))`;
  const onlyDecimals = String.raw`${decimalMark}(?<only>\d+)`;
  return new RegExp(
    String.raw`^${SIGN}(?:${whole}${decimals}?|${onlyDecimals})(?<exponent>e[+-]?\d+)?$`,
    "iu",
  );
}

const PATTERNS: Record<DecimalMark, RegExp> = {
  comma: pattern(",", "."),
  point: pattern(String.raw`\.`, ","),
};

/** What JavaScript reads as it stands, under a decimal point: most cells. */
const PLAIN = /^-?\d+(?:\.\d+)?$/;

/** The number that `text` is (see above), or undefined where it is none. Never negative zero. */
export function parseNumber(text: string, decimal: DecimalMark): number | undefined {
  const trimmed = text.trim();
  const value =
    decimal === "point" && PLAIN.test(trimmed) ? Number(trimmed) : parsePattern(trimmed, PATTERNS[decimal]);
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

/** Empty, white space, or only dashes: a cell in which nothing was measured. */
export function isBlank(text: string): boolean {
  return /^[\s\-‐‑‒–—−]*$/.test(text);
}
