/** From the text of a cell to a reading in SI units and the target frame. */
import { signOf } from "../../../shared/interval.ts";
import type { Direction, Hand, Unit } from "../../../shared/plan-model.ts";
import { type DecimalMark, isBlank, parseNumber } from "./number.ts";

/** How the cells of one column are written. */
export interface Notation {
  readonly decimal: DecimalMark;
  readonly unit: Unit;
  /** What a reading without a direction word means; null where it is taken as it is written. */
  readonly positive: Direction | null;
  /** The direction words of the metric. */
  readonly directions: readonly Direction[];
  readonly hand: Hand | null;
}

/** The value; or that nothing was measured; or that it cannot be read; or that it depends on a hand nobody stated. */
export type Reading = number | "blank" | "unreadable" | "hand-missing";

/**
 * Reads a cell: a number as `parseNumber` takes it, alone or followed by the column's own unit; and, where the metric
 * has sides, a direction word before the number or after it (`3.2 left`, `2.1° R`, `L 4`), written out or cut short as
 * long as it stays clear which side is meant. A number with a direction word must not have a sign too. A unit other
 * than the column's makes the cell unreadable: nothing is converted on a guess.
 */
export function readCell(cell: string, notation: Notation): Reading {
  const bare = parseNumber(cell, notation.decimal);
  if (bare !== undefined) return toFrame(bare, notation.positive, notation);
  if (isBlank(cell)) return "blank";
  const parts = partsOf(cell.trim());
  if (parts === undefined) return "unreadable";
  const number = parseNumber(parts.number, notation.decimal);
  if (number === undefined) return "unreadable";
  const words = [parts.before, withoutUnit(parts.after, notation.unit)].filter((word) => word !== "");
  const [word] = words;
  if (word === undefined) return toFrame(number, notation.positive, notation);
  if (words.length > 1 || /^[+\-−–]/.test(parts.number)) return "unreadable";
  return inDirection(number, word, notation);
}

function toFrame(number: number, direction: Direction | null, { unit, hand }: Notation): Reading {
  if (direction?.handed === true && hand === null) return "hand-missing";
  const value = number * unit.factor * signOf(direction, hand ?? "right");
  return value === 0 ? 0 : value;
}

/** The reading on the side that `word` names, where all words that begin so name the same side. */
function inDirection(number: number, word: string, notation: Notation): Reading {
  const start = word.toLowerCase().replace(/\s+/g, "-");
  const meant = notation.directions.filter((direction) => direction.word.startsWith(start));
  const exact = meant.filter((direction) => direction.word === start);
  const readings = new Set(
    (exact.length > 0 ? exact : meant).map((direction) => toFrame(number, direction, notation)),
  );
  const [reading] = readings;
  return reading === undefined || readings.size > 1 ? "unreadable" : reading;
}

/** Splits `L 4.2°` into what stands before the number, the number with its sign, and what stands after it. */
function partsOf(text: string): { before: string; number: string; after: string } | undefined {
  const firstDigit = text.search(/\d/);
  if (firstDigit < 0) return undefined;
  let end = text.length;
  while (!isNumeral(text[end - 1])) end--;
  let start = firstDigit;
  if (isDecimalMark(text[start - 1])) start--;
  const sign = /[+\-−–]\s?$/.exec(text.slice(Math.max(0, start - 2), start));
  if (sign !== null) start -= sign[0].length;
  return {
    before: text.slice(0, start).trim(),
    number: text.slice(start, end),
    after: text.slice(end).trim(),
  };
}

const isDecimalMark = (character: string | undefined) => character === "." || character === ",";
const isNumeral = (character: string | undefined) =>
  character !== undefined && (isDecimalMark(character) || (character >= "0" && character <= "9"));

/** What is left of `text` when the unit at its beginning, or all of it, is taken off. */
function withoutUnit(text: string, unit: Unit): string {
  const [first = "", ...rest] = text.replace(/^([°º])(?=\S)(?!\/)/, "$1 ").split(/\s+/);
  return namesUnit(first, unit) ? rest.join(" ") : text;
}

/** True where the text is the symbol of the unit, give or take case and a plural s. The unit one has no symbol. */
export function namesUnit(text: string, unit: Unit): boolean {
  const symbol = foldUnit(unit.symbol);
  const written = foldUnit(text);
  return symbol !== "" && (written === symbol || written === `${symbol}s`);
}

/** The same unit in its usual spellings: case, and the ways to write a degree. */
function foldUnit(symbol: string): string {
  return symbol.toLowerCase().replace(/^(?:º|deg(?:rees?|s)?\.?(?![a-z]))/, "°");
}
