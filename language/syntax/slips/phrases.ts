/** What is said the way people say it, but not the way the language has it: `7/10`, `150–160 yd`, `7 iron`. */
import { type Explanation, loopAround, type Recogniser } from "../slip.ts";
import { SLIP } from "../slip-tokens.ts";
import { excerpt, firstOfLine, nameOf, rangeOf, type Token, touch } from "../tokens.ts";
import {
  amountAt,
  asWritten,
  EVERYDAY_UNITS,
  insertBefore,
  isNumber,
  isText,
  isWord,
  LIMITS,
  lastOf,
  nearby,
  rewrite,
  takeOut,
  typeOf,
  wordsOf,
} from "./nearby.ts";

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

/** `carry 150–160 yd`, `carry from 150 yd to 160 yd`. */
export const rangeInOtherWords: Recogniser = (misfit) => {
  const { line } = nearby(misfit);
  const start = line[0]?.image === "from" ? 1 : 0;
  const low = amountAt(line, start);
  const joint = line[start + (low?.length ?? 0)];
  const high = amountAt(line, start + (low?.length ?? 0) + 1);
  if (!misfit.expected.includes("between") || low === undefined || high === undefined) return undefined;
  if (joint?.image !== "to" && !isDash(joint)) return undefined;
  // A unit that is said once is meant twice.
  const text = `between ${low.number}${low.unit || high.unit} and ${high.number}${high.unit || low.unit}`;
  const last = line[start + low.length + high.length] as Token;
  return rewrite(`A range is written \`${text}\`.`, line[0] as Token, last, text);
};

/** `2° in to out` for the name of a direction, which is one word. */
export const splitDirection: Recogniser = (misfit) => {
  const [from, to, side] = nearby(misfit).line;
  if (from === undefined || side === undefined) return undefined;
  const text = `${from.image}-${to?.image}-${side.image}`;
  if (!/^(?:in-to-out|out-to-in|left-to-right|right-to-left)$/.test(text)) return undefined;
  return rewrite(`The parts of a name are joined by hyphens: \`${text}\`.`, from, side, text);
};

/** Clubs that are told apart by numbers. */
const CLUB_KINDS = ["iron", "wood", "hybrid"];

const CLUB = new RegExp(`^(?:driver|putter|.+-(?:wedge|${CLUB_KINDS.join("|")}))$`);

/** `10 shots 7-iron`. */
export const clubWithoutWith: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [club] = line;
  if (!/^shots?$/.test(before?.image ?? "") || !isWord(club) || misfit.slip.loop === undefined)
    return undefined;
  if (!CLUB.test(club.image)) return undefined;
  return insertBefore("The club stands behind `with`.", club, "with");
};

/** `10 7-iron shots`. */
export const clubBeforeShots: Recogniser = (misfit) => {
  const { before: number, line } = nearby(misfit);
  const [club, shots] = line;
  if (!isNumber(number) || !isWord(club) || !misfit.expected.includes("shots")) return undefined;
  if (shots === undefined || !/^shots?$/.test(shots.image) || !CLUB.test(club.image)) return undefined;
  return rewrite("The club stands behind `with`.", club, shots, `${shots.image} with ${club.image}`);
};

/** What is said of how hard a line of shots is hit, behind its number or its club. */
const EFFORT =
  /^(?:at |with |@ )?(?:(?<word>full|half|maximum|max) (?:effort|speed|power|swings?)|effort (?:of |= |: )?(?<behind>\d+) %|(?<before>\d+) %(?: (?:effort|speed|power|intensity))?)(?= |$)/;

/** `10 shots at half effort`, `10 shots effort 50 %`, `10 shots 50 % effort`, `10 shots at 50 %`. */
export const effortInOtherWords: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, index } = misfit;
  const isBehindAt = before?.image === "at";
  const said = isBehindAt ? [before, ...line] : line;
  const match = EFFORT.exec(wordsOf(said));
  const [first] = said;
  if (match === null || first === undefined || loopAround(slip)?.starters.has("leave") !== true)
    return undefined;
  const earlier = slip.tokens.slice(firstOfLine(slip.tokens, index), index);
  if (!earlier.some(({ image }) => /^shots?$/.test(image))) return undefined;
  const { word, behind, before: share } = match.groups ?? {};
  const text = `at ${behind ?? share ?? (word === "half" ? 50 : 100)} % effort`;
  const last = lastOf(match[0], said);
  return rewrite(`How hard the swings are is a share of a full one: \`${text}\`.`, first, last, text);
};

/** `10 shots at 50 % effort with 7-iron`. */
export const clubBehindEffort: Recogniser = ({ slip, index, token }) => {
  const club = slip.tokens[index + 1];
  const [at, share, percent, effort] = slip.tokens.slice(Math.max(0, index - 4), index);
  if (token?.image !== "with" || effort?.image !== "effort" || at?.image !== "at" || !isWord(club))
    return undefined;
  if (share === undefined || percent === undefined) return undefined;
  const text = `with ${club.image} ${asWritten([at, share, percent, effort])}`;
  return rewrite(`The club stands before the effort: \`${text}\`.`, at, club, text);
};

/** The kinds of blocks that are two words elsewhere: `warm up`, `free play`. */
export const splitKind: Recogniser = (misfit) => {
  const [first, second] = nearby(misfit).line;
  if (first === undefined || second === undefined) return undefined;
  const text = `${first.image}-${second.image}`;
  const kinds = misfit.slip.grammar.rules.get("BlockKind")?.own ?? [];
  return kinds.includes(text)
    ? rewrite(`The parts of a name are joined by hyphens: \`${text}\`.`, first, second, text)
    : undefined;
};

/** `7iron`, `3w`. */
export const clubRunTogether: Recogniser = (misfit) => {
  const [number, word] = nearby(misfit).line;
  if (!isNumber(number) || !isWord(word) || !touch(number, word) || !misfit.expected.includes("WORD"))
    return undefined;
  const kind = CLUB_KINDS.find(
    (known) => word.image === known || word.image === known[0] || word.image === `${known}s`,
  );
  if (kind === undefined) return undefined;
  const text = `${number.image}-${kind}`;
  return rewrite(`The parts of a name are joined by hyphens: \`${text}\`.`, number, word, text);
};

/** `column "Path" is club-path °`, `column "Carry" is carry (yd)`. */
export const unitWithoutIn: Recogniser = (misfit) => {
  const { line } = nearby(misfit);
  const { tokens, start, loop } = misfit.slip;
  if (tokens[start]?.image !== "column" || loop === undefined) return undefined;
  const [first, second, third] = line;
  const isInBrackets = first?.image === "(" && third?.image === ")";
  const unit = isInBrackets ? second : first;
  if (first === undefined || unit === undefined || !EVERYDAY_UNITS.has(unit.image)) return undefined;
  const text = `in ${unit.image}`;
  return rewrite(
    `The unit of a column stands behind \`in\`: \`${text}\`.`,
    first,
    (isInBrackets && third) || first,
    text,
  );
};

/** What is said of shots that should not count, before what they have in common. */
const LEFT_OUT =
  /^(?:leave out|exclude|ignore|drop|skip|discard|omit|remove)(?: the)?(?: (?:shots?|balls?)(?: (?:with|where|when|if|that have|whose))?)?(?= )/;

/** `exclude shots with carry below 100 yd`, `leave out shots with …`. */
export const shotsLeftOut: Recogniser = ({ slip, index, token }) => {
  const { tokens } = slip;
  if (token === undefined || loopAround(slip)?.starters.has("leave") !== true) return undefined;
  // It may be read as a number of shots that has a name, up to where its condition begins.
  const first = firstOfLine(tokens, index);
  const { line } = nearby({ slip, index: first, token: tokens[first], expected: [] });
  const said = LEFT_OUT.exec(wordsOf(line))?.[0];
  if (said === undefined || said === "leave out shots where") return undefined;
  const last = lastOf(said, line);
  const text = "leave out shots where";
  return rewrite(`What does not count is said with \`${text}\`.`, line[0] as Token, last, text);
};

/** `3 x 10 shots`, `3 sets of 10 shots`, `10 x 7-iron`. */
export const sets: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  // Without a number before it a line of shots may start with a parameter, and it is the number that does not fit.
  const all = isNumber(before) ? [before, ...line] : line;
  const [number, second, third] = all;
  const isTimes = /^[x×*]$/.test(second?.image ?? "");
  const isSets = second?.image === "sets" && third?.image === "of";
  if (!isNumber(number) || (!isTimes && !isSets)) return undefined;
  const [behind, shots] = all.slice(isSets ? 3 : 2);
  if (isTimes && isWord(behind)) {
    const text = `${number.image} shots with ${behind.image}`;
    return rewrite(`How many shots with which club is written \`${text}\`.`, number, behind, text);
  }
  if (!isNumber(behind)) return undefined;
  const text = `${Number(number.image) * Number(behind.image)} shots`;
  const last = shots !== undefined && /^shots?$/.test(shots.image) ? shots : behind;
  return rewrite(`Shots are counted as a whole: \`${text}\`.`, number, last, text);
};

/** `warmup "Wake up" {` for a block, whose kind stands behind its name, and `baseline {` for one without a name. */
export const kindBeforeBlock: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [kind, name] = line;
  if (before !== undefined || kind === undefined || !misfit.slip.loop?.starters.has("block"))
    return undefined;
  const known = kind.image === "warmup" ? "warm-up" : kind.image;
  if (!misfit.slip.grammar.rules.get("BlockKind")?.own.includes(known)) return undefined;
  if (name !== undefined && isText(name)) {
    const text = `block ${name.image} ${known}`;
    return rewrite(`The kind of a block stands behind its name: \`${excerpt(text)}\`.`, kind, name, text);
  }
  if (line[1]?.image !== "{") return undefined;
  const text = `block "${known[0]?.toUpperCase()}${known.slice(1).replace("-", " ")}" ${known}`;
  return rewrite(`A block has a name, and its kind stands behind it: \`${text}\`.`, kind, kind, text);
};

/** `headwind 5 mph`. */
export const windFirst: Recogniser = (misfit) => {
  const { line } = nearby(misfit);
  const [word, speed, unit] = line;
  const from = word && { headwind: "head", tailwind: "tail" }[word.image];
  if (word === undefined || from === undefined || !misfit.slip.loop?.starters.has("wind")) return undefined;
  if (!isNumber(speed) || unit === undefined) return undefined;
  const text = `wind ${speed.image}${touch(speed, unit) ? "" : " "}${unit.image} ${from}`;
  return rewrite(`Wind is written \`${text}\`.`, word, unit, text);
};

/** `+-2°` for `±2°`. */
export const plusMinus: Recogniser = (misfit) => {
  const [plus, minus] = nearby(misfit).line;
  if (plus?.image !== "+" || minus?.image !== "-" || !misfit.expected.includes("NUMBER")) return undefined;
  return rewrite("Plus or minus is written `±` or `+/-`.", plus, minus, "±");
};

/** Words between which no hyphen was meant. */
const JOINING = new Set([
  "a",
  "an",
  "the",
  "all",
  "any",
  "every",
  "each",
  "no",
  "as",
  "and",
  "or",
  "not",
  "of",
  "with",
  "than",
]);

/** `club path`, `face to path` and `7 iron` for a name, which is one word. */
export const splitName: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [first, second] = line;
  if (first === undefined || second === undefined) return undefined;
  if (isWord(before) && misfit.expected.includes("within")) {
    const limit = line.findIndex(({ image }) => LIMITS.has(image));
    const others = line.slice(0, Math.max(0, limit));
    const isName = others.every(({ image }) => /^\p{L}+$/u.test(image) && !JOINING.has(image));
    if (!isName || others.length === 0 || others.length > 2) return undefined;
    return joined(before, ...others);
  }
  if (!misfit.expected.includes("WORD") || !isWord(second) || touch(first, second)) return undefined;
  const isClub = isNumber(first) && CLUB_KINDS.includes(second.image);
  const isName = isKeyword(first) && !JOINING.has(first.image) && /^[\p{L}-]+$/u.test(second.image);
  return isClub || isName ? joined(first, second) : undefined;
};

function joined(first: Token, ...others: Token[]): Explanation {
  const text = [first, ...others].map(({ image }) => image).join("-");
  return rewrite(
    `The parts of a name are joined by hyphens: \`${text}\`.`,
    first,
    others.at(-1) as Token,
    text,
  );
}

/** `shape is a draw`, `on the target`: an article, where the word behind it fits. */
export const article: Recogniser = (misfit) => {
  const [word, next] = nearby(misfit).line;
  const { expected } = misfit;
  if (word === undefined || next === undefined || !/^(?:an?|the)$/.test(word.image)) return undefined;
  if (expected.includes(word.image) || !expected.includes(nameOf(next.tokenType))) return undefined;
  return takeOut(`No article stands here: take \`${word.image}\` out.`, [word], next);
};

/** `shots 10`, `shots: 10`. */
export const countBehind: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [word, ...behind] = line;
  const number = /^[:=]$/.test(behind[0]?.image ?? "") ? behind[1] : behind[0];
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
