/** Limits in everyday words: `no more than 2 shots`, `carry 140 yd or more`, `carry is 60 yd ± 5 yd`, `every shot`. */
import type { Explanation, Misfit, Recogniser } from "../slip.ts";
import { firstOfLine, type Token } from "../tokens.ts";
import {
  amountAt,
  asWritten,
  goalAround,
  insertBefore,
  isNumber,
  isWord,
  LIMITS,
  nearby,
  rewrite,
  takeOut,
} from "./nearby.ts";

type Bound = "at least" | "at most" | "above" | "below";

/** What is said before a number. Of phrases that begin alike the longer stands first. */
const BEFORE: readonly (readonly [said: string, bound: Bound])[] = [
  ["no more than", "at most"],
  ["not more than", "at most"],
  ["up to", "at most"],
  ["maximum of", "at most"],
  ["maximum", "at most"],
  ["max", "at most"],
  ["no less than", "at least"],
  ["no fewer than", "at least"],
  ["not less than", "at least"],
  ["not fewer than", "at least"],
  ["not below", "at least"],
  ["not under", "at least"],
  ["not above", "at most"],
  ["not over", "at most"],
  ["minimum of", "at least"],
  ["minimum", "at least"],
  ["min", "at least"],
  ["more than", "above"],
  ["greater than", "above"],
  ["bigger than", "above"],
  ["longer than", "above"],
  ["higher than", "above"],
  ["over", "above"],
  ["less than", "below"],
  ["fewer than", "below"],
  ["smaller than", "below"],
  ["shorter than", "below"],
  ["lower than", "below"],
  ["under", "below"],
];

/** What is said behind a number, after `or`. */
const BEHIND: Readonly<Record<string, Bound>> = {
  more: "at least",
  better: "at least",
  above: "at least",
  higher: "at least",
  longer: "at least",
  less: "at most",
  fewer: "at most",
  below: "at most",
  under: "at most",
  lower: "at most",
  shorter: "at most",
};

/** What a sentence has between a metric and its limit. */
const VERBS = ["is", "be", "should be", "must be", "to be", "needs to be", "has to be", "stays", "remains"];

/** What is said between a metric and the value it should have. */
const EQUALS: ReadonlySet<string> = new Set(["is", "=", "of", "about", "around", "roughly", "exactly"]);

/** `carry more than 140 yd`, `carry 140 yd or more`. */
export const limitOfAmount: Recogniser = (misfit) => {
  if (!isBehindMetric(misfit)) return undefined;
  const { line } = nearby(misfit);
  const phrase = phraseBefore(line);
  if (phrase !== undefined) {
    const { said, bound, length } = phrase;
    const last = line[length - 1] as Token;
    return rewrite(`\`${said}\` is \`${bound}\` here.`, line[0] as Token, last, bound);
  }
  const amount = amountAt(line, 0);
  const behind = amount && boundBehind(line, amount.length);
  if (amount === undefined || behind === undefined) return undefined;
  const text = `${behind.bound} ${amount.text}`;
  return rewrite(`A limit stands before its number: \`${text}\`.`, line[0] as Token, behind.last, text);
};

/** `carry is at least 140 yd`, `carry should be more than 140 yd`. */
export const limitInSentence: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  // Behind a metric `is` can be read: a name may follow.
  const sentence = before?.image === "is" ? [before, ...line] : line;
  if (sentence === line && !isBehindMetric(misfit)) return undefined;
  const verb = VERBS.find((said) => said.split(" ").every((word, place) => sentence[place]?.image === word));
  const rest = verb === undefined ? [] : sentence.slice(verb.split(" ").length);
  const [start, limit] = [sentence[0], rest[0]];
  if (verb === undefined || start === undefined || limit === undefined) return undefined;
  const phrase = phraseBefore(rest);
  if (phrase !== undefined) {
    const { said, bound, length } = phrase;
    return rewrite(`\`${verb} ${said}\` is \`${bound}\` here.`, start, rest[length - 1] as Token, bound);
  }
  if (!LIMITS.has(limit.image) || limit.image === "is") return undefined;
  const text = [limit.image, ...(limit.image === "at" ? [rest[1]?.image] : [])].join(" ");
  const message = `A limit stands right behind its metric: leave \`${verb}\` out before \`${text}\`.`;
  return takeOut(message, sentence.slice(0, sentence.length - rest.length), limit);
};

/** `no more than 2 shots`, `7 or more of 10 shots`, `over 70 % of shots` at the start of a goal. */
export const limitOfShots: Recogniser = (misfit) => {
  const goal = goalAround(misfit);
  const [first] = goal;
  if (first === undefined) return undefined;
  const phrase = phraseBefore(goal);
  const place = phrase?.length ?? 0;
  const number = goal[place];
  if (!isNumber(number)) return undefined;
  const isShare = /^(?:%|percent)$/.test(goal[place + 1]?.image ?? "");
  const behind = boundBehind(goal, place + (isShare ? 2 : 1));
  const bound = phrase?.bound ?? behind?.bound;
  const last = behind?.last ?? (isShare ? goal[place + 1] : number);
  if (bound === undefined || last === undefined) return undefined;
  const text = `${countBound(bound, number, isShare)}${isShare ? " %" : ""}`;
  return rewrite(`How many shots is said with \`at least\` or \`at most\`: \`${text}\`.`, first, last, text);
};

/** `all shots on target`, `all 4 shots on target`, `every shot with …`, `half of the shots`. */
export const everyShot: Recogniser = (misfit) => {
  const goal = goalAround(misfit);
  const [first] = goal;
  const share = first && { all: 100, every: 100, each: 100, half: 50 }[first.image];
  if (first === undefined || share === undefined) return undefined;
  const place = goal.findIndex(({ image }, at) => at > 0 && !/^(?:of|the)$/.test(image));
  const number = share === 100 ? goal[place] : undefined;
  const shots = goal[isNumber(number) ? place + 1 : place];
  if (shots === undefined || !/^shots?$/.test(shots.image)) return undefined;
  const text = isNumber(number)
    ? `at least ${number.image} of ${number.image} shots`
    : `at least ${share} % of shots`;
  return rewrite(`How many shots is said as a number: \`${text}\`.`, first, shots, text);
};

/** `carry is 60 yd +/- 5 yd`, `carry about 60 yd`. */
export const valueToBeNear: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const isBefore = before?.image === "is" && misfit.expected.includes("WORD");
  if (line.length === 0 || (!isBefore && !isBehindMetric(misfit))) return undefined;
  const { tokens } = misfit.slip;
  if (tokens[firstOfLine(tokens, misfit.index)]?.image === "column") return undefined; // no limit stands there
  const all = isBefore && before !== undefined ? [before, ...line] : line;
  const place = EQUALS.has(all[0]?.image ?? "") ? 1 : 0;
  const value = amountAt(all, place);
  if (value === undefined) return aroundZero(all, place);
  const { sign, length } = plusMinusAt(all, place + value.length);
  const width = sign ? amountAt(all, place + value.length + length) : undefined;
  if (width === undefined) {
    const last = all[place + value.length - 1] as Token;
    return {
      ...rewrite(`Say how close it must be: \`within … of ${value.text}\`.`, all[0] as Token, last, ""),
      fixes: [],
    };
  }
  // A unit that is said once is meant twice.
  const text = `within ${width.number}${width.unit || value.unit} of ${value.number}${value.unit || width.unit}`;
  const last = all[place + value.length + length + width.length - 1] as Token;
  return rewrite(`How close it must be to a value is written \`${text}\`.`, all[0] as Token, last, text);
};

/** `club-path ±2°`, `club-path = ±2°`. */
function aroundZero(line: readonly Token[], place: number): Explanation | undefined {
  const { sign, length } = plusMinusAt(line, place);
  const width = sign ? amountAt(line, place + length) : undefined;
  if (width === undefined) return undefined;
  const text = `within ±${width.text}`;
  const last = line[place + length + width.length - 1] as Token;
  return rewrite(`How close it must be is written \`${text}\`.`, line[0] as Token, last, text);
}

/** `start-direction within 2° left to 2° right`. */
export const withinBothSides: Recogniser = ({ slip, index, token }) => {
  const [within, low, unit, side] = slip.tokens.slice(Math.max(0, index - 4), index);
  const [joint, high, otherUnit, otherSide] = nearby({ slip, index, token, expected: [] }).line;
  if (within?.image !== "within" || !isNumber(low) || !isNumber(high)) return undefined;
  if (!/^(?:to|and|or)$/.test(joint?.image ?? "") || !isWord(side) || !isWord(otherSide)) return undefined;
  const amount = (first: Token, last: Token) =>
    asWritten(slip.tokens.slice(slip.tokens.indexOf(first), slip.tokens.indexOf(last) + 1));
  const text = `between ${amount(low, side)} and ${amount(high, otherSide)}`;
  return unit === undefined || otherUnit === undefined
    ? undefined
    : rewrite(`A range is written \`${text}\`.`, within, otherSide, text);
};

/** `shape draw`, `face-angle square`: a name right behind a metric. */
export const nameBehindMetric: Recogniser = (misfit) => {
  const { before: metric, line } = nearby(misfit);
  const [name, next] = line;
  if (!isBehindMetric(misfit) || metric === undefined || name === undefined) return undefined;
  if (!/^\p{L}+$/u.test(name.image)) return undefined;
  if (next !== undefined && next.image !== "}" && next.image !== "or" && next.image !== "and")
    return undefined;
  return insertBefore(
    `Say how it must be: \`${metric.image} is ${name.image}\`, or a limit such as \`${metric.image} within …\`.`,
    name,
    "is",
  );
};

/** Whether a limit was expected: behind a metric. */
function isBehindMetric({ expected }: Misfit): boolean {
  return expected.includes("within") && expected.includes("at");
}

/** A limit in everyday words at the start of a line, and the number behind it. */
export function phraseBefore(line: readonly Token[]) {
  for (const [said, bound] of BEFORE) {
    const words = said.split(" ");
    if (!words.every((word, place) => line[place]?.image.toLowerCase() === word)) continue;
    if (isNumber(line[words.length])) return { said, bound, length: words.length };
  }
  return undefined;
}

function boundBehind(line: readonly Token[], place: number) {
  const [or, word] = [line[place], line[place + 1]];
  const bound = BEHIND[word?.image ?? ""];
  return or?.image === "or" && word !== undefined && bound !== undefined ? { bound, last: word } : undefined;
}

/** `at least 8` for more than 7: shots are counted. A share is not, and loses the little that `more than` adds. */
function countBound(bound: Bound, { image }: Token, isShare: boolean): string {
  if (bound === "at least" || bound === "at most") return `${bound} ${image}`;
  const isAbove = bound === "above";
  const step = isShare || !/^\d+$/.test(image) ? 0 : isAbove ? 1 : -1;
  return `${isAbove ? "at least" : "at most"} ${step === 0 ? image : Math.max(0, Number(image) + step)}`;
}

function plusMinusAt(
  line: readonly Token[],
  place: number,
): { readonly sign: boolean; readonly length: number } {
  const image = line[place]?.image;
  if (image === "±" || image === "+/-") return { sign: true, length: 1 };
  const next = line[place + 1]?.image;
  if (image === "+" && next === "-") return { sign: true, length: 2 };
  const isInWords = /^(?:plus (?:or|\/) minus|give or take)$/.test(
    `${image} ${next} ${line[place + 2]?.image}`,
  );
  return { sign: isInWords, length: isInWords ? 3 : 0 };
}
