/** The tokens around a place where the parser could not go on, and ways to write them anew. */
import { type Explanation, loopAround, type Misfit } from "../slip.ts";
import { excerpt, hasPlace, nameOf, rangeOf, startsLine, type Token, touch } from "../tokens.ts";

/** Tokens of a line that a phrase takes, from the one that does not fit. */
const LONGEST_PHRASE = 8;

export interface Nearby {
  /** The token before, if it stands on the same line. */
  readonly before: Token | undefined;
  /** The one that does not fit, and those behind it on its line. */
  readonly line: readonly Token[];
}

export function nearby({ slip: { tokens }, index, token }: Misfit): Nearby {
  if (token === undefined) return { before: undefined, line: [] };
  const line = [token];
  while (line.length < LONGEST_PHRASE) {
    const next = tokens[index + line.length];
    if (!hasPlace(next) || startsLine(next, line.at(-1))) break;
    line.push(next);
  }
  const before = tokens[index - 1];
  return { before: startsLine(token, before) ? undefined : before, line };
}

/** The tokens of a goal from its first, where it is among these that the parser stopped; else none. */
export function goalAround({ slip, index }: Misfit): readonly Token[] {
  const { tokens, start } = slip;
  const isBehindWord = /^(?:success|when)$/.test(tokens[start]?.image ?? "");
  const behind = tokens[start + 1]?.image === "{" ? start + 2 : start + 1;
  const first = isBehindWord ? behind : start;
  if (!isBehindWord && loopAround(slip)?.starters.has("average") !== true) return [];
  if (index < first || index > first + FEW) return [];
  return nearby({ slip, index: first, token: tokens[first], expected: [] }).line;
}

/** Words that can be read before it is clear that they are none of the language. */
const FEW = 3;

/** A number and the unit behind it. */
export interface Amount {
  readonly number: string;
  /** With the space before it, if there is one; empty where there is none. */
  readonly unit: string;
  readonly text: string;
  /** How many tokens it takes. */
  readonly length: number;
}

/** Undefined where no number stands. */
export function amountAt(line: readonly Token[], place: number): Amount | undefined {
  const [number, unit] = [line[place], line[place + 1]];
  if (!isNumber(number)) return undefined;
  const text = isWord(unit) ? (touch(number, unit) ? "" : " ") + unit.image : "";
  return { number: number.image, unit: text, text: number.image + text, length: isWord(unit) ? 2 : 1 };
}

/** Writes another text from one token to another. */
export function rewrite(message: string, first: Token, last: Token, text: string): Explanation {
  const range = rangeOf(first, last);
  return {
    message,
    range,
    fixes: [{ title: `Write ${excerpt(text.trim())}`, edits: [{ range, newText: text }] }],
  };
}

/** Takes words, of which there are some, out before what goes on behind them. */
export function takeOut(message: string, words: readonly Token[], next: Token): Explanation {
  const [first, last] = [words[0] as Token, words.at(-1) as Token];
  const said = excerpt(wordsOf(words));
  const range = { start: rangeOf(first).start, end: rangeOf(next).start };
  return {
    message,
    range: rangeOf(first, last),
    fixes: [{ title: `Take ${said} out`, edits: [{ range, newText: "" }] }],
  };
}

/** As they were written, with a space between each. */
export function wordsOf(line: readonly Token[]): string {
  return line.map(({ image }) => image).join(" ");
}

/** The last token of what was found at the beginning of their words. */
export function lastOf(found: string, line: readonly Token[]): Token {
  return line[found.split(" ").length - 1] as Token;
}

/** As they were written, those that touch without a space between. */
export function asWritten(line: readonly Token[]): string {
  return line
    .map((token, place) => (place === 0 || touch(line[place - 1] as Token, token) ? "" : " ") + token.image)
    .join("");
}

/** Writes a text before a token, with a space between. */
export function insertBefore(message: string, token: Token, text: string): Explanation {
  const range = rangeOf(token);
  const edit = { range: { start: range.start, end: range.start }, newText: `${text} ` };
  return { message, range, fixes: [{ title: `Write ${excerpt(text)}`, edits: [edit] }] };
}

export function typeOf(token: Token | undefined): string | undefined {
  return token === undefined ? undefined : nameOf(token.tokenType);
}

export function isNumber(token: Token | undefined): token is Token {
  return typeOf(token) === "NUMBER";
}

export function isWord(token: Token | undefined): token is Token {
  return typeOf(token) === "WORD";
}

export function isText(token: Token | undefined): token is Token {
  return typeOf(token) === "STRING";
}

/** The words with which a limit can begin behind a metric. */
export const LIMITS: ReadonlySet<string> = new Set(["at", "within", "between", "above", "below", "is"]);

/** Units that everybody knows, with their dimensions: what is not in the library is not known to a parser. */
export const EVERYDAY_UNITS: ReadonlyMap<string, string> = new Map([
  ["°", "angle"],
  ["deg", "angle"],
  ["yd", "length"],
  ["m", "length"],
  ["ft", "length"],
  ["mph", "speed"],
  ["m/s", "speed"],
  ["km/h", "speed"],
  ["rpm", "rotation"],
  ["s", "duration"],
  ["min", "duration"],
]);
