/** What is said the way people say it, but not the way the language has it: `7/10`, `150–160 yd`, `7 iron`. */
import type { Explanation, Recogniser } from "../slip.ts";
import { SLIP } from "../slip-tokens.ts";
import { nameOf, rangeOf, type Token, touch } from "../tokens.ts";
import { EVERYDAY_UNITS, isNumber, isWord, LIMITS, nearby, rewrite, typeOf } from "./nearby.ts";

/** `7/10 shots` and `7 out of 10 shots`. */
export const fraction: Recogniser = (misfit) => {
  const { before: number, line } = nearby(misfit);
  if (!isNumber(number) || !misfit.expected.includes("of")) return undefined;
  const [token, second, third] = line;
  const isOutOf = token?.image === "out" && second?.image === "of";
  const total = isOutOf ? third : token?.image === "/" ? second : undefined;
  if (!isNumber(total)) return undefined;
  const text = `${number.image} of ${total.image}`;
  return rewrite(`A part of the shots is written \`${text} shots\`.`, number, total, text);
};

/** `between 150–160 yd`. */
export const dashForAnd: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [dash, high] = line;
  if (!misfit.expected.includes("and") || !isDash(dash) || !isNumber(high)) return undefined;
  const text = (before && touch(before, dash) ? " " : "") + (touch(dash, high) ? "and " : "and");
  return {
    message: "A range has a word between its ends: write `and`.",
    range: rangeOf(dash),
    fixes: [{ title: "Write and", edits: [{ range: rangeOf(dash), newText: text }] }],
  };
};

/** `carry 150–160 yd`. */
export const dashForBetween: Recogniser = (misfit) => {
  const [low, dash, high, sign] = nearby(misfit).line;
  if (!misfit.expected.includes("between") || !isNumber(low) || !isDash(dash) || !isNumber(high)) {
    return undefined;
  }
  const unit = isUnit(sign) ? sign : undefined;
  const behind = unit === undefined ? "" : (touch(high, unit) ? "" : " ") + unit.image;
  const text = `between ${low.image}${behind} and ${high.image}${behind}`;
  return rewrite(`A range is written \`${text}\`.`, low, unit ?? high, text);
};

/** `+-2°` for `±2°`. */
export const plusMinus: Recogniser = (misfit) => {
  const [plus, minus] = nearby(misfit).line;
  if (plus?.image !== "+" || minus?.image !== "-" || !misfit.expected.includes("NUMBER")) return undefined;
  return rewrite("Plus or minus is written `±` or `+/-`.", plus, minus, "±");
};

/** `club path`, `face angle` and `7 iron` for a name, which is one word. */
export const splitName: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [first, second] = line;
  if (first === undefined || second === undefined) return undefined;
  if (isWord(before) && isWord(first) && LIMITS.has(second.image) && misfit.expected.includes("within")) {
    const text = `${before.image}-${first.image}`;
    return rewrite(`The parts of a name are joined by hyphens: \`${text}\`.`, before, first, text);
  }
  if (!misfit.expected.includes("WORD")) return undefined;
  if (!isNumber(first) && !isKeyword(first)) return undefined;
  if (isNumber(first) && EVERYDAY_UNITS.has(second.image)) return undefined;
  if (typeOf(second) !== "WORD" || !/^[\p{L}-]+$/u.test(second.image) || touch(first, second))
    return undefined;
  const text = `${first.image}-${second.image}`;
  return rewrite(`The parts of a name are joined by hyphens: \`${text}\`.`, first, second, text);
};

/** `shots 10`. */
export const countBehind: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [word, number] = line;
  if (misfit.slip.loop?.starters.has("NUMBER") !== true || before !== undefined) return undefined;
  return isNumber(number) && /^shots?$/.test(word?.image ?? "") ? numberFirst(word, number) : undefined;
};

/** `time min 40`, where `min` was read as a parameter. */
export const unitBefore: Recogniser = (misfit) => {
  const { before: unit, line } = nearby(misfit);
  const [number, next] = line;
  const { slip, index } = misfit;
  const isComplete = slip.loop !== undefined || slip.start === index;
  if (!isComplete || !isUnit(unit) || !isNumber(number) || isUnit(next)) return undefined;
  return isNumber(slip.tokens[index - 2]) ? undefined : numberFirst(unit, number);
};

function numberFirst(word: Token | undefined, number: Token): Explanation | undefined {
  if (word === undefined) return undefined;
  const text = `${number.image} ${word.image}`;
  return rewrite(`The number stands first: \`${text}\`.`, word, number, text);
}

/** `- 10 shots` and `* 10 shots`, as in a list. */
export const bullet: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [mark, next] = line;
  const { loop } = misfit.slip;
  if (mark === undefined || next === undefined || loop === undefined || before !== undefined)
    return undefined;
  if (!/^[-*+\u2010-\u2015\u2022\u2212]$/.test(mark.image)) return undefined;
  if (!loop.starters.has(nameOf(next.tokenType))) return undefined;
  const range = { start: rangeOf(mark).start, end: rangeOf(next).start };
  return {
    message: `A statement has no mark before it: take the ${mark.image} out.`,
    range: rangeOf(mark),
    fixes: [{ title: `Take the ${mark.image} out`, edits: [{ range, newText: "" }] }],
  };
};

function isDash(token: Token | undefined): token is Token {
  return token?.image === "-" || typeOf(token) === SLIP.dash;
}

function isUnit(token: Token | undefined): boolean {
  return typeOf(token) === "WORD";
}

function isKeyword(token: Token): boolean {
  return typeOf(token) === token.image && /^\p{L}/u.test(token.image);
}
