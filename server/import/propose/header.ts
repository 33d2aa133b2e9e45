/** What a column's name says: words, a unit, and which side is positive. */
import { symbolOf } from "../cells/unit-words.ts";
import { NEUTRAL_WORDS, SAME_WORDS } from "./header-words.ts";

export interface ParsedHeader {
  /** In lower case, abbreviations written out, without the unit and what stands in brackets. */
  readonly words: readonly string[];
  /** The symbol of the unit that the header states. */
  readonly unit: string | undefined;
  /** The word for the side that the header calls positive, as it is written there: `right`, `R`, `in-to-out`. */
  readonly positive: string | undefined;
}

/** What stands further behind in a header says nothing. */
const LONGEST = 200;
const BRACKETS = /[([{]([^)\]}]*)[)\]}]/g;

/** Reads headers such as `Club Speed (mph)`, `clubSpeed_mph`, `Path [deg, + = right]`, `Carry, m`, `Offline L-/R+`. */
export function parseHeader(header: string): ParsedHeader {
  const text = header.slice(0, LONGEST).normalize("NFKC").trim();
  const inBrackets = [...text.matchAll(BRACKETS)].map(([, content = ""]) => content);
  const outside = text.replace(BRACKETS, " ");
  const [name = "", ...behind] = outside.split(/[,;:]/);
  const remarks = [...inBrackets, ...behind];
  const stated = remarks.map(unitIn).find((unit) => unit !== undefined);
  const positive = [...remarks, outside].map(positiveIn).find((word) => word !== undefined);
  const { words, unit } = withoutUnit(partedWords(withoutSigns(name)));
  const more = behind.filter((part) => unitIn(part) === undefined && positiveIn(part) === undefined);
  return {
    words: [...words, ...more.flatMap((part) => partedWords(withoutSigns(part)))].flatMap(writtenOut),
    unit: stated ?? unit,
    positive,
  };
}

/** The words of a phrase as a header's words are compared with it. */
export function wordsOf(phrase: string): string[] {
  return partedWords(phrase).flatMap(writtenOut);
}

/** Whether all these words may be left out. */
export function areNeutral(words: Iterable<string>, more: ReadonlySet<string> | undefined): boolean {
  for (const word of words) if (!NEUTRAL_WORDS.has(word) && more?.has(word) !== true) return false;
  return true;
}

/** German letters as programs write them that know none. */
const PLAIN_LETTERS: Readonly<Record<string, string>> = { ä: "ae", ö: "oe", ü: "ue", ß: "ss" };

function partedWords(text: string): string[] {
  return text
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .replace(/(\p{Lu})(\p{Lu}\p{Ll})/gu, "$1 $2")
    .toLowerCase()
    .replace(/[äöüß]/g, (letter) => PLAIN_LETTERS[letter] ?? letter)
    .split(/[\s_.|·–-]+/u)
    .filter((word) => word !== "");
}

function writtenOut(word: string): string[] {
  return word
    .split("/")
    .map((part) => part.replace(/[^\p{L}\p{N}#%°]/gu, ""))
    .filter((part) => part !== "")
    .flatMap((part) => (SAME_WORDS[part] ?? part).split(" "));
}

/** Takes the unit off the end, if more than the unit is there: `carry yd`, `ball speed m/s`. */
function withoutUnit(words: readonly string[]): { words: readonly string[]; unit: string | undefined } {
  const last = words.at(-1);
  const unit = last === undefined || words.length === 1 ? undefined : symbolOf(last);
  return unit === undefined ? { words, unit } : { words: words.slice(0, -1), unit };
}

function unitIn(remark: string): string | undefined {
  const whole = symbolOf(remark.trim());
  if (whole !== undefined) return whole;
  const parts = remark.split(/[\s,;]+/).map(symbolOf);
  return parts.find((unit) => unit !== undefined);
}

/** What sides are called in headers. */
const SIDE =
  "(?<side>in-to-out|out-to-in|in-out|out-in|left|right|up|down|in|out|open|closed|toe|heel|high|low|ahead|behind|draw|fade|push|pull|[lrudioc])(?![a-z-])";
const POSITIVE = [
  String.raw`\bpos(?:itive|\.)?\s*(?:is|=|:)?\s*(?:to\s+(?:the\s+)?)?${SIDE}`,
  String.raw`(?<![a-z-])${SIDE}\s*(?:is|=|:)\s*(?:\+|pos(?:itive)?\b)`,
  String.raw`(?<![\w+])\+(?:ve)?\s*(?:is|=|:|→|->)?\s*(?:to\s+(?:the\s+)?)?${SIDE}`,
  String.raw`(?<![a-z-])${SIDE}\s?\+(?!\w)`,
].map((pattern) => new RegExp(pattern, "i"));

/** Finds what is called positive: `+ = right`, `R+`, `positive right`, `right is positive`, `right = +`. */
function positiveIn(text: string): string | undefined {
  for (const pattern of POSITIVE) {
    const side = pattern.exec(text)?.groups?.side;
    if (side !== undefined) return side.toLowerCase().replace(/^(in|out)-(out|in)$/, "$1-to-$2");
  }
  return undefined;
}

const REMARKS = [
  ...POSITIVE,
  new RegExp(String.raw`(?<![a-z-])${SIDE}\s?[-−](?!\w)`, "i"),
  new RegExp(String.raw`(?<![\w-])[-−]\s*(?:is|=|:)\s*${SIDE}`, "i"),
];

/** The name without remarks on signs: `Offline L-/R+` is `Offline`. */
function withoutSigns(text: string): string {
  return REMARKS.reduce((rest, remark) => rest.replace(remark, " "), text).replace(/\s\/\s/g, " ");
}
