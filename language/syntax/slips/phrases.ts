/** What is said the way people say it, but not the way the language has it: `7/10`, `150–160 yd`, `7 iron`. */
import type { Explanation, Recogniser } from "../slip.ts";
import { SLIP } from "../slip-tokens.ts";
import { nameOf, rangeOf, type Token, touch } from "../tokens.ts";
import { EVERYDAY_UNITS, insertBefore, isNumber, nearby, rewrite, typeOf } from "./nearby.ts";

/** `7 of 10 shots` and `70 % of shots`, which begin like `7 in a row` and `2 of { … }`; and `7 at least of 10 shots`. */
export const boundMissing: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, index, expected } = misfit;
  const [token, bound] = line;
  const isGroup = before?.image === "of" && expected.includes("{");
  const number = isGroup ? slip.tokens[index - 2] : before;
  if (!isNumber(number) || token === undefined || (!isGroup && !expected.includes("in"))) return undefined;
  if (token.image === "at" && (bound?.image === "least" || bound?.image === "most")) {
    const text = `at ${bound.image} ${number.image}`;
    return rewrite(`The number stands behind these words: \`${text}\`.`, number, bound, text);
  }
  if (isGroup ? !isNumber(token) : !["%", "shots", "shot"].includes(token.image)) return undefined;
  const text = `at least ${number.image}`;
  return rewrite(`Say whether this is the least or the most, as in \`${text}\`.`, number, number, text);
};

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

/** `club path` and `7 iron` for a name, which is one word. */
export const splitName: Recogniser = (misfit) => {
  const [first, second] = nearby(misfit).line;
  if (first === undefined || second === undefined || !misfit.expected.includes("WORD")) return undefined;
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

/** `90 percentile of carry`. */
export const ordinal: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const word = line[0]?.image === "%" ? line[1] : line[0];
  if (word?.image !== "percentile" || !isNumber(before) || !misfit.expected.includes("th")) return undefined;
  const text = `${before.image}${endingOf(Number(before.image))} percentile`;
  return rewrite(`Percentiles are counted: \`${text}\`.`, before, word, text);
};

/** `1st`, `2nd`, `3rd`, `90th`. */
function endingOf(number: number): string {
  const isTeen = number % 100 > 10 && number % 100 < 14;
  return (isTeen ? undefined : ["th", "st", "nd", "rd"][number % 10]) ?? "th";
}

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

/** What limits can follow a metric in a test. */
const LIMITS: ReadonlySet<string> = new Set(["at", "within", "between", "above", "below", "is"]);

/** `carry at least 150 yd` as a goal: which shots, or what of them? */
export const statisticMissing: Recogniser = (misfit) => {
  const { before: metric, line } = nearby(misfit);
  const { slip, index, expected } = misfit;
  const [limit] = line;
  if (limit === undefined || metric === undefined || !slip.grammar.names.has(nameOf(metric.tokenType)))
    return undefined;
  if (!LIMITS.has(limit.image) || !expected.includes("gains") || slip.start > index - 1) return undefined;
  const isName = limit.image === "is";
  const goal = `at least 70 % of shots with ${metric.image} ${limit.image} …`;
  const average = isName ? [] : [{ title: "Write average", edits: [insertionAt(metric, "average ")] }];
  return {
    message: isName
      ? `Say how many shots: \`${goal}\`.`
      : `Say what of \`${metric.image}\`, as in \`average ${metric.image} ${limit.image} …\`, or how many shots: \`${goal}\`.`,
    range: rangeOf(metric, limit),
    fixes: [
      ...average,
      { title: "Ask for a share of the shots", edits: [insertionAt(metric, "at least 70 % of shots with ")] },
    ],
  };
};

function insertionAt(token: Token, newText: string) {
  const { start } = rangeOf(token);
  return { range: { start, end: start }, newText };
}

/** `at least 7 of 10 on target`. */
export const shotsMissing: Recogniser = (misfit) => {
  const [word] = nearby(misfit).line;
  if (word === undefined || !misfit.expected.includes("shots")) return undefined;
  if (!["on", "with", "inside", "outside"].includes(word.image)) return undefined;
  return insertBefore("Say what is counted: `shots`.", word, "shots");
};

/** `window "Path" club-path within ±2°`, `for driver club-path within ±3°`. */
export const isMissing: Recogniser = (misfit) => {
  const [metric, limit] = nearby(misfit).line;
  const { slip, expected } = misfit;
  if (metric === undefined || limit === undefined || !expected.includes("is")) return undefined;
  const isInWindow = slip.rules.some((rule) => rule === "Window" || rule === "WindowVariant");
  if (!isInWindow || typeOf(metric) !== "WORD" || !LIMITS.has(limit.image)) return undefined;
  return insertBefore(
    `What a window asks for stands behind \`is\`: \`is ${metric.image} ${limit.image} …\`.`,
    metric,
    "is",
  );
};

/** `usual carry 150 yd ± 6 yd`, `reads carry ± 2 m`, `reads carry within ±2 m`. */
export const plusMinusInWords: Recogniser = (misfit) => {
  const [sign, number] = nearby(misfit).line;
  if (sign === undefined || number === undefined || (sign.image !== "±" && sign.image !== "+/-"))
    return undefined;
  const { slip, expected } = misfit;
  const rule = slip.tokens[slip.start]?.image;
  if (rule === "usual")
    return rewrite(
      "How much it varies is said in a word: `spread`.",
      sign,
      sign,
      touch(sign, number) ? "spread " : "spread",
    );
  if (rule !== "reads") return undefined;
  if (expected.includes("within")) {
    return rewrite(
      "How far readings may be off is said in a word: `within`.",
      sign,
      sign,
      touch(sign, number) ? "within " : "within",
    );
  }
  return {
    message: "Readings may be off either way as it is: take the sign out.",
    range: rangeOf(sign),
    fixes: [
      {
        title: `Take ${sign.image} out`,
        edits: [{ range: { start: rangeOf(sign).start, end: rangeOf(number).start }, newText: "" }],
      },
    ],
  };
};
