/** From the text of a cell to a reading in SI units and the target frame. */
import { signOf } from "../../../shared/interval.ts";
import type { Direction, Hand, Unit } from "../../../shared/plan-model.ts";
import { type DecimalMark, isBlank, parseNumber, type ThousandsMark } from "./number.ts";
import { foldUnit, symbolOf } from "./unit-words.ts";

/** How the cells of one column are written. */
export interface Notation {
  readonly decimal: DecimalMark;
  readonly thousands: ThousandsMark | null;
  readonly unit: Unit;
  /** What a reading without a direction word means; null where it is taken as it is written. */
  readonly positive: Direction | null;
  /** The direction words of the metric. */
  readonly directions: readonly Direction[];
  /** What the source says that a text beside the number means. It goes before the direction words. */
  readonly sides: readonly { readonly text: string; readonly direction: Direction }[];
  readonly hand: Hand | null;
}

/** The value; or that nothing was measured; or that it cannot be read; or that it depends on a hand nobody stated. */
export type Reading = number | "blank" | "unreadable" | "hand-missing";

/**
 * Reads a cell: a number as `parseNumber` takes it, alone or followed by the column's own unit; and, where the metric
 * has sides, a direction word before the number or after it (`3.2 left`, `2.1° R`, `L 4`), written out or cut short as
 * long as it stays clear which side is meant, or a text that the source gives for a side. A number with a direction word
 * must not have a sign too. Brackets around the number, and a minus behind it, are such texts, written `()` and `-`: most
 * who write so mean a minus, but not all. A unit other than the column's makes the cell unreadable: nothing is converted on
 * a guess.
 */
export function readCell(cell: string, notation: Notation): Reading {
  const bare = parseNumber(cell, notation.decimal, notation.thousands);
  if (bare !== undefined) return toFrame(bare, notation.positive, notation);
  if (isBlank(cell)) return "blank";
  const parts = partsOf(cell.trim());
  if (parts === undefined) return "unreadable";
  const number = parseNumber(parts.number, notation.decimal, notation.thousands);
  if (number === undefined) return "unreadable";
  const words = [parts.before, withoutUnit(parts.after, notation.unit)].filter((word) => word !== "");
  const [word] = words;
  if (word === undefined) return toFrame(number, notation.positive, notation);
  if (words.length > 1 || /^[+\-−–]/.test(parts.number)) return "unreadable";
  return inDirection(number, word, notation);
}

function toFrame(number: number, direction: Direction | null, { unit, hand }: Notation): Reading {
  if (direction?.handed === true && hand === null) return "hand-missing";
  const value = number * unit.factor * signOf(direction, hand ?? "right") + (unit.offset ?? 0);
  return value === 0 ? 0 : value;
}

/** The reading on the side that `word` names, where all words that begin so name the same side. */
function inDirection(number: number, word: string, notation: Notation): Reading {
  const spelled = sideKey(word);
  const stated = notation.sides.find(({ text }) => sideKey(text) === spelled);
  if (stated !== undefined) return toFrame(number, stated.direction, notation);
  const start = spelled.replace(/\s+/g, "-");
  const meant = notation.directions.filter((direction) => direction.word.startsWith(start));
  const exact = meant.filter((direction) => direction.word === start);
  const readings = new Set(
    (exact.length > 0 ? exact : meant).map((direction) => toFrame(number, direction, notation)),
  );
  const [reading] = readings;
  return reading === undefined || readings.size > 1 ? "unreadable" : reading;
}

/** A text beside a number without regard to case, and to which of the dashes is its minus. */
function sideKey(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/^[−–]$/, "-");
}

/** The text beside a number that is most often its minus: brackets around it, or a dash behind it; undefined where there is none. */
export function minusBeside(text: string): "()" | "-" | undefined {
  const key = sideKey(partsOf(text.trim())?.after.split(/\s+/).at(-1) ?? "");
  return key === "()" || key === "-" ? key : undefined;
}

/**
 * Splits `L 4.2°` into what stands before the number, the number with its sign, and what stands after it. Brackets around all
 * of it stand after it: `(4.2)` as `4.2 ()`.
 */
export function partsOf(text: string): { before: string; number: string; after: string } | undefined {
  const bracketed = /^\(([^()]*)\)$/.exec(text)?.[1];
  if (bracketed !== undefined) {
    const parts = partsOf(bracketed.trim());
    return parts && { ...parts, after: `${parts.after} ()`.trim() };
  }
  const firstDigit = text.search(/\d/);
  if (firstDigit < 0) return undefined;
  let end = text.length;
  while (!isDigit(text[end - 1])) end--;
  if (isDecimalMark(text[end])) end++; // `5.` is a number; the full stop of `5 yd.` stands further behind
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
const isDigit = (character: string | undefined) =>
  character !== undefined && character >= "0" && character <= "9";

/** What is left of `text` when the unit at its beginning, or all of it, is taken off. */
function withoutUnit(text: string, unit: Unit): string {
  if (text === "") return text;
  const [first = "", ...rest] = text.replace(/^([°º])(?=\S)(?!\/)/, "$1 ").split(/\s+/);
  return namesUnit(first, unit) ? rest.join(" ") : namesUnit(text, unit) ? "" : text;
}

/** True where the text is the unit, in its symbol or another usual spelling. The unit one has none. */
export function namesUnit(text: string, unit: Unit): boolean {
  if (unit.symbol === "") return false;
  const written = foldUnit(text);
  const symbol = foldUnit(unit.symbol);
  const meant = symbolOf(written);
  if (meant !== undefined) return meant === (symbolOf(symbol) ?? unit.symbol);
  return written === symbol || written === `${symbol}s`;
}
