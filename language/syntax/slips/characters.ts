/** Characters and numbers as other places have them: curly quotation marks, decimal commas, signs for words. */

import type { Misfit, Recogniser } from "../slip.ts";
import { SLIP } from "../slip-tokens.ts";
import { excerpt, lastOfLine, rangeOf, shown, type Token, touch } from "../tokens.ts";
import { rewrite, typeOf } from "./nearby.ts";

/** Marks of a table and what they are called. */
const MARKS: Readonly<Record<string, string>> = {
  ",": "comma",
  ";": "semicolon",
  "\\t": "tab",
  "|": "pipe",
  ".": "point",
  dot: "point",
  period: "point",
  " ": "space",
  "'": "apostrophe",
};

/** `separator ";"`, `decimal ,`. */
export const markByItself: Recogniser = ({ token, expected }) => {
  const name = token && MARKS[token.image.replace(/^"(.*)"$/s, "$1")];
  if (token === undefined || name === undefined || !expected.includes(name)) return undefined;
  return rewrite(`A mark is called by its name: \`${name}\`.`, token, token, name);
};

export const unclosedText: Recogniser = ({ token }) => {
  if (token === undefined || typeOf(token) !== SLIP.unclosedText) return undefined;
  const text = token.image.trimEnd();
  const closed = `${text.replace(/\s*\{$/, "")}"${text.endsWith("{") ? " {" : ""}`;
  const range = rangeOf(token);
  return {
    message: 'This text is not closed. Put a " at its end, on the same line.',
    range: { start: range.start, end: { ...range.end, character: range.start.character + text.length } },
    fixes: [{ title: `Write ${excerpt(closed)}`, edits: [{ range, newText: closed }] }],
  };
};

export const otherQuotationMarks: Recogniser = ({ token }) => {
  if (token === undefined) return undefined;
  if (typeOf(token) !== SLIP.curlyText && typeOf(token) !== SLIP.singleQuotedText) return undefined;
  const text = `"${token.image
    .replace(/^.|[”“‟„«»‘’'"]$/gu, "")
    .trim()
    .replaceAll('"', "'")}"`;
  const message = `Texts stand in straight double quotation marks: write ${excerpt(text)}.`;
  return rewrite(message, token, token, text);
};

export const unclosedComment: Recogniser = ({ token }) => {
  if (token === undefined || typeOf(token) !== SLIP.unclosedComment) return undefined;
  const { start } = rangeOf(token);
  return {
    message: "This comment is not closed, so the rest of the file is part of it. Put */ at its end.",
    range: { start, end: { line: start.line, character: start.character + 2 } },
  };
};

const COMPARISONS: Readonly<Record<string, string>> = {
  "<": "below",
  ">": "above",
  "<=": "at most",
  ">=": "at least",
  "≤": "at most",
  "≥": "at least",
};

/** Words for a sign, with the spaces around them that a sign does not need. */
function inPlaceOf(token: Token, words: string, before: Token | undefined, next: Token | undefined): string {
  const spaceBefore = before !== undefined && touch(before, token) ? " " : "";
  const spaceBehind = next !== undefined && touch(token, next) ? " " : "";
  return spaceBefore + words + spaceBehind;
}

export const comparison: Recogniser = ({ slip, token, index, expected }) => {
  const words = token && typeOf(token) === SLIP.comparison ? COMPARISONS[token.image] : undefined;
  if (token === undefined || words === undefined) return undefined;
  if (!expected.includes(words.split(" ", 1)[0] ?? "")) return undefined; // no limit can stand here
  const newText = inPlaceOf(token, words, slip.tokens[index - 1], slip.tokens[index + 1]);
  return rewrite(`\`${token.image}\` is said in words: write \`${words}\`.`, token, token, newText);
};

/** `70 percent of shots`. */
export const percentInWords: Recogniser = ({ token, expected }) => {
  if (token?.image !== "percent" || !expected.includes("%")) return undefined;
  return rewrite("A share of shots is written with the sign: `70 % of shots`.", token, token, "%");
};

/** `45º` and `45˚`: an ordinal and a ring for the sign of degrees. */
export const degreeSign: Recogniser = ({ token }) => {
  if (token === undefined || !/^[\u00BA\u02DA]$/.test(token.image)) return undefined;
  return rewrite("This character only looks like the sign of degrees: write °.", token, token, "°");
};

/** `from 10.30` for a time. */
export const timeWithPoint: Recogniser = ({ token, expected }) => {
  if (token === undefined || !expected.includes("TIME") || !/^\d{1,2}\.\d{2}$/.test(token.image))
    return undefined;
  const text = token.image.replace(".", ":");
  return rewrite(`A time has a colon: ${text}.`, token, token, text);
};

const POWERS: Readonly<Record<string, string>> = { "2": "²", "3": "³" };

/** `yd^2`. */
export const power: Recogniser = ({ slip: { tokens }, index, token }) => {
  const [unit, number] = [tokens[index - 1], tokens[index + 1]];
  const raised = POWERS[number?.image ?? ""];
  if (token?.image !== "^" || typeOf(unit) !== "WORD" || !unit || !number || raised === undefined)
    return undefined;
  const text = unit.image + raised;
  return rewrite(`A power is part of its unit: \`${text}\`.`, unit, number, text);
};

/** `2,5°` for 2.5°, and `1,200 rpm` for 1200 rpm. */
export const decimalComma: Recogniser = ({ slip, token, index }) => {
  const before = slip.tokens[index - 1];
  const after = slip.tokens[index + 1];
  if (token?.image !== "," || typeOf(before) !== "NUMBER" || typeOf(after) !== "NUMBER") return undefined;
  if (!before || !after || !touch(before, token) || !touch(token, after)) return undefined;
  const decimal = `${before.image}.${after.image}`;
  const whole = before.image + after.image;
  const isThousands = /^\d{1,3}$/.test(before.image) && /^\d{3}(\.\d+)?$/.test(after.image);
  const numbers = isThousands ? [whole, decimal] : [decimal];
  const range = rangeOf(before, after);
  return {
    message: `Numbers have a decimal point and nothing between thousands: write ${numbers.map(excerpt).join(" or ")}.`,
    range,
    fixes: numbers
      .filter((number) => /^\d+(\.\d+)?$/.test(number))
      .map((number) => ({ title: `Write ${excerpt(number)}`, edits: [{ range, newText: number }] })),
  };
};

/** `-2°` and `+2°`. */
export const sign: Recogniser = ({ slip, token, index, expected }) => {
  const number = slip.tokens[index + 1];
  if (token === undefined || number === undefined || !expected.includes("NUMBER")) return undefined;
  const isMinus = token.image === "-" || typeOf(token) === SLIP.dash;
  if ((!isMinus && token.image !== "+") || typeOf(number) !== "NUMBER") return undefined;
  const range = rangeOf(token, number);
  if (isMinus && slip.rules.some((rule) => slip.grammar.rules.get(rule)?.own.includes("minus"))) {
    const text = `minus ${number.image}`;
    return {
      message: `Below zero is said in a word: \`${text}\`.`,
      range,
      fixes: [{ title: `Write ${text}`, edits: [{ range, newText: text }] }],
    };
  }
  const advice = "Amounts have no sign. A word behind the unit says the direction, as in `2° left`";
  if (isMinus) return { message: `${advice}: write the word instead of the minus.`, range };
  return {
    message: `${advice}: take the plus out.`,
    range,
    fixes: [
      { title: `Write ${shown(number)}`, edits: [{ range: rangeOf(token, number), newText: number.image }] },
    ],
  };
};

/** `date 12.10.2026` or `date 2026-1-5`. */
export const dateInOtherOrder: Recogniser = ({ slip, token, index, expected }) => {
  if (token === undefined || !expected.includes("DATE") || typeOf(token) !== "NUMBER") return undefined;
  const last = slip.tokens[lastOfLine(slip.tokens, index)] as Token;
  const range = rangeOf(token, last);
  const written = slip.tokens.slice(index, lastOfLine(slip.tokens, index) + 1).map(({ image }) => image);
  const dates = datesOf(written.join(""));
  return {
    message: `A date is written year-month-day: ${dates.length > 0 ? dates.join(" or ") : "2026-10-12"}.`,
    range,
    fixes: dates.map((date) => ({ title: `Write ${date}`, edits: [{ range, newText: date }] })),
  };
};

/** Between slashes the day or the month may stand first: both, where both can be. */
function datesOf(text: string): string[] {
  const [, year, month, day] = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})$/.exec(text) ?? [];
  if (year !== undefined) return [isoDate(year, month, day)];
  const [, first, mark, second, last] = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(text) ?? [];
  if (last === undefined) return [];
  if (mark === ".") return [isoDate(last, second, first)];
  const readings = [
    { month: second, day: first },
    { month: first, day: second },
  ].filter((reading) => Number(reading.month) <= 12 && Number(reading.day) <= 31);
  return [...new Set(readings.map((reading) => isoDate(last, reading.month, reading.day)))];
}

function isoDate(year: string, month = "", day = ""): string {
  return `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
}

/** Marks that other notations put at the end of a line, behind a word or before a comment. */
export const mark: Recogniser = ({ slip, token, index }: Misfit) => {
  // A colon belongs to parameters, and means nothing elsewhere.
  if (token === undefined || (typeOf(token) !== SLIP.unknown && token.image !== ":")) return undefined;
  const range = rangeOf(token);
  if (token.image === "#") {
    const last = slip.tokens[lastOfLine(slip.tokens, index)] as Token;
    return {
      message: "A comment starts with //.",
      range: rangeOf(token, last),
      fixes: [{ title: "Write //", edits: [{ range, newText: "//" }] }],
    };
  }
  const advice: Readonly<Record<string, string>> = {
    ";": "A statement ends with its line: take the ; out.",
    ".": "A statement ends with its line: take the full stop out.",
    ":": "No : stands between the words of a statement: take it out.",
  };
  const message = advice[token.image];
  if (message !== undefined)
    return {
      message,
      range,
      fixes: [{ title: `Take the ${token.image} out`, edits: [{ range, newText: "" }] }],
    };
  if (/^[\p{C}\p{Z}]$/u.test(token.image)) {
    const number = token.image.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
    return {
      message: `An invisible character (U+${number}) stands here: take it out.`,
      range,
      fixes: [{ title: "Take it out", edits: [{ range, newText: "" }] }],
    };
  }
  const sign = token.image === "`" ? "A `" : `\`${token.image}\``;
  return {
    message: `${sign} means nothing here. Take it out, or put it in quotation marks if it belongs to a text.`,
    range,
  };
};

/** `**target**`, `` `carry` ``: marks around a word, with which other notations set it apart. */
export const marksAround: Recogniser = ({ slip: { tokens }, index, token }) => {
  if (token === undefined || !/^[*_`~]$/.test(token.image)) return undefined;
  const line = tokens.slice(index, lastOfLine(tokens, index) + 1);
  const isMark = ({ image }: Token) => image === token.image;
  const first = line.findIndex((each) => !isMark(each));
  const behind = line.slice(first).findIndex(isMark);
  const marks = line.slice(first + behind, first + behind + first);
  if (first < 1 || behind < 1 || marks.length < first || !marks.every(isMark)) return undefined;
  const last = marks.at(-1) as Token;
  return {
    message: `Words stand without marks around them: take the ${token.image.repeat(first)} out.`,
    range: rangeOf(token, last),
    fixes: [
      {
        title: `Take the ${token.image.repeat(first)} out`,
        edits: [
          { range: rangeOf(token, line[first - 1]), newText: "" },
          { range: rangeOf(marks[0] as Token, last), newText: "" },
        ],
      },
    ],
  };
};
