/** Words that remarks about blocks share. */
import { signOf } from "../../shared/interval.ts";
import type { Direction, Hand, Location, Metric, Unit } from "../../shared/plan-model.ts";
import { wordFor, writeAmount } from "../../shared/quantity.ts";
import type { Interval } from "../../shared/statistics/interval.ts";

/** Digits that are meant in a number that was worked out. */
const DIGITS = 4;

/** How readings are said: to a player of which hand, in which unit, and in the words of which hand. */
export interface Manner {
  readonly hand: Hand;
  readonly unit: Unit;
  /** Whether sides are called as everybody sees them (`right`) and not as the hand has them (`in-to-out`). */
  readonly isPlain: boolean;
}

/** The manner in which something with these direction words was written. */
export function mannerOf(written: readonly Direction[], unit: Unit, hand: Hand): Manner {
  return { hand, unit, isPlain: written.length > 0 && written.every(({ handed }) => !handed) };
}

/** Ranges are rounded outwards by less than this share of a unit, also those that end at zero. */
const NEXT_TO_ZERO = 1e-9;

/** `3° to 5° closed`, `at least 150 yd`, `at most 2° open`, `anything`. */
export function rangeInWords(range: Interval, metric: Metric, manner: Manner): string {
  const settled = (end: number) => (Math.abs(end) < NEXT_TO_ZERO * manner.unit.factor ? 0 : end);
  const [low, high] = [settled(range.low), settled(range.high)];
  const at = (value: number) => reading(value, metric, manner);
  if (Number.isFinite(low) && Number.isFinite(high)) return between(low, high, metric, manner);
  if (!Number.isFinite(low) && !Number.isFinite(high)) return "anything";
  const isSided = metric.directions.length > 0;
  if (Number.isFinite(low)) {
    if (isSided && low < 0) return `at most ${at(low)}`;
    return `at least ${low === 0 ? zeroOf(1, metric, manner) : at(low)}`;
  }
  if (isSided && high < 0) return `at least ${at(high)}`;
  return isSided && high === 0 ? `at least ${zeroOf(-1, metric, manner)}` : `at most ${at(high)}`;
}

function between(low: number, high: number, metric: Metric, manner: Manner): string {
  const first = low < 0 && high <= 0 && metric.directions.length > 0 ? high : low;
  const last = first === low ? high : low;
  if (rounded(low, manner) === rounded(high, manner)) return reading(last, metric, manner);
  const isOneSided = low >= 0 || high <= 0 || metric.directions.length === 0;
  const start = isOneSided ? amount(first, metric, manner) : reading(first, metric, manner);
  return `${start} to ${reading(last, metric, manner)}`;
}

/** A reading, SI and target frame: `2.5° in-to-out`. */
function reading(value: number, metric: Metric, manner: Manner): string {
  const word = value === 0 ? undefined : sideWord(value < 0 ? -1 : 1, metric, manner);
  return suffixed(amount(value, metric, manner), word);
}

function zeroOf(sign: 1 | -1, metric: Metric, manner: Manner): string {
  return suffixed(amount(0, metric, manner), sideWord(sign, metric, manner));
}

function suffixed(text: string, word: string | undefined): string {
  return word === undefined ? text : `${text} ${word}`;
}

function sideWord(sign: 1 | -1, { directions }: Metric, { hand, isPlain }: Manner): string | undefined {
  const plain = directions.filter(({ handed }) => !handed);
  if (isPlain && plain.length > 0) return plain.find((word) => signOf(word, hand) === sign)?.word;
  return wordFor(sign, directions, hand);
}

/** A value without its side. */
function amount(value: number, { directions }: Metric, manner: Manner): string {
  const size = directions.length > 0 ? Math.abs(value) : value;
  return writeAmount({ value: rounded(size, manner), unit: manner.unit, direction: null });
}

function rounded(value: number, { unit }: Manner): number {
  return Number((value / unit.factor).toPrecision(DIGITS)) * unit.factor;
}

/** `line 9`, or of another file `line 9 of gates.drill`. */
export function placeInWords({ file, range }: Location, from: Location): string {
  const line = `line ${range.start.line + 1}`;
  return file === from.file ? line : `${line} of ${nameOf(file)}`;
}

/** The last part of a URI. */
function nameOf(uri: string): string {
  const name = uri.slice(uri.lastIndexOf("/") + 1);
  try {
    return decodeURIComponent(name);
  } catch {
    return name; // a stray percent sign
  }
}

/** Something written in a plan, or a word of the language or of the vocabulary, as the editor sets it off. */
export function code(text: string): string {
  return `\`${text}\``;
}

/** A name that is written in quotation marks. */
export function quoted(name: string): string {
  return `"${name}"`;
}

/** The sentence begins with a capital letter. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
