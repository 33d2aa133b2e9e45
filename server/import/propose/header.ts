/** What a column's name says: words, a unit, and which side is positive. */
import { symbolOf } from "../cells/unit-words.ts";
import { NEUTRAL_WORDS, SAME_WORDS } from "./header-words.ts";
import { type StatedSide, statedSide, withoutSides, withoutSigns } from "./stated-side.ts";

export interface ParsedHeader extends StatedSide {
  /** In lower case, abbreviations written out, without the unit and what stands in brackets. */
  readonly words: readonly string[];
  /** What else is said: in brackets, where it is neither a unit nor about sides (`Launch angle (horizontal)`), or by the unit. */
  readonly aside: readonly string[];
  /** The symbol of the unit that the header states. */
  readonly unit: string | undefined;
}

/** Units that say that a name means a speed: `Ball mph`. */
const SPEEDS: ReadonlySet<string | undefined> = new Set(["mph", "km/h", "m/s"]);

/** What stands further behind in a header says nothing. */
const LONGEST = 200;
/** Raised figures behind a word refer to a footnote; those of units stand behind a letter or two, or a raised minus. */
const FOOTNOTES = /(?<=\p{L}{3})[¹²³⁴⁵]+(?!\p{L})/gu;
const BRACKETS = /[([{]([^)\]}]*)[)\]}]/g;

/** Reads headers such as `Club Speed (mph)`, `clubSpeed_mph`, `Path [deg, + = right]`, `Carry in m`, `Offline L-/R+`. */
export function parseHeader(header: string): ParsedHeader {
  // The compatibility form of the ordinal sign, which people type for degrees, is the letter o.
  const written = header
    .slice(0, LONGEST)
    .replaceAll("º", "°")
    .replace(FOOTNOTES, "")
    .normalize("NFKC")
    .trim();
  const text = withSides(written);
  const inBrackets = [...text.matchAll(BRACKETS)].map(([, content = ""]) => remarkOf(content));
  const outside = text.replace(BRACKETS, " ");
  const [name = "", ...rest] = outside.split(/[,;:]/);
  const behind = remarkOf(rest.join(","));
  const remarks = [...inBrackets, behind];
  const named = withoutSides(name, false);
  const { words, unit } = withoutUnit(/\p{L}/u.test(named) ? named : withoutSigns(name));
  const { positive, negative } = remarks.find((remark) => remark.side !== undefined)?.side ??
    statedSide(outside, false) ??
    statedSide(text.replace(/[()[\]{}]/g, " "), false) ?? { positive: undefined, negative: undefined };
  const stated = remarks.find((remark) => remark.unit !== undefined)?.unit ?? unit;
  const said = [...words, ...behind.words].flatMap(writtenOut);
  const aside = inBrackets.flatMap((remark) => remark.words).flatMap(writtenOut);
  const isSpeed = SPEEDS.has(stated) && ![...said, ...aside].includes("speed");
  return {
    words: said,
    aside: isSpeed ? [...aside, "speed"] : aside,
    unit: stated,
    positive,
    negative,
  };
}

/** In names from programs, too, a side is a word of its own: `side_right_positive`. */
function withSides(text: string): string {
  const parted = text.replaceAll("_", " ");
  return statedSide(text, false) === undefined && statedSide(parted, false) !== undefined ? parted : text;
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
const BETWEEN_WORDS = /[\s_.|·–-]+/u;

function partedWords(text: string): string[] {
  return camelParted(text)
    .toLowerCase()
    .replace(/[äöüß]/g, (letter) => PLAIN_LETTERS[letter] ?? letter)
    .split(BETWEEN_WORDS)
    .filter((word) => word !== "");
}

function camelParted(text: string): string {
  return text
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .replace(/(\p{Lu})(\p{Lu}\p{Ll})/gu, "$1 $2")
    .replace(/#/g, " # ");
}

function writtenOut(word: string): string[] {
  return word
    .split(/[/+&]/)
    .map((part) => part.replace(/[^\p{L}\p{N}#%°]/gu, ""))
    .filter((part) => part !== "")
    .flatMap((part) => (SAME_WORDS[part] ?? part).split(" "));
}

/** Of how many words a unit may be made: `m per s`. */
const LONGEST_UNIT = 3;

/** Takes the unit off the end, if more than the unit is there: `carry yd`, `ball speed m/s`, `ball_speed_m_s`, `carry in m`. */
function withoutUnit(name: string): { words: string[]; unit: string | undefined } {
  const text = camelParted(name).trim();
  const starts = [...text.matchAll(/(?<=[\s_.|·–-])[^\s_.|·–-]/gu)].map(({ index }) => index);
  for (const start of starts.slice(-LONGEST_UNIT)) {
    const tail = text.slice(start).replace(/\.$/, "");
    const asQuotient = tail.replace(/[\s_.-]+(?:per[\s_.-]+)?/giu, "/");
    const isOneWord = !BETWEEN_WORDS.test(tail) || /1$/.test(tail); // `m s-1`
    const unit = symbolOf(asQuotient) ?? (isOneWord ? symbolOf(tail.replaceAll("_", "")) : undefined);
    if (unit === undefined) continue;
    const words = partedWords(text.slice(0, start));
    if (words.length > 1 && words.at(-1) === "in") words.pop();
    if (words.length > 0) return { words, unit };
  }
  return { words: partedWords(text), unit: undefined };
}

/** What stands in brackets or behind a comma: a unit, a side, words. */
function remarkOf(content: string): {
  unit: string | undefined;
  side: StatedSide | undefined;
  words: string[];
} {
  const parts = content.split(/[,;]/).map((part) => part.trim());
  const whole = symbolOf(content.trim());
  if (whole !== undefined) return { unit: whole, side: undefined, words: [] };
  const isUnit = (part: string) => symbolOf(part) !== undefined;
  const rest = parts.filter((part) => !isUnit(part)).join(", ");
  const side = statedSide(rest, true);
  // Beside a plus or a minus, `in` is a side and no inch.
  const isUnitWord = (word: string) => isUnit(word) && !(side !== undefined && /^in$/i.test(word));
  const words = withoutSides(rest, true)
    .split(/[\s,;]+/)
    .filter((word) => word !== "");
  const unit = [...parts.filter(isUnit), ...rest.split(/[\s,;]+/).filter(isUnitWord)][0];
  return {
    unit: unit === undefined ? undefined : symbolOf(unit),
    side,
    words: words.filter((word) => !isUnitWord(word)).flatMap(partedWords),
  };
}
