/** Words that are misspelt, stand in the wrong place, or have quotation marks where none belong. */
import { nearest } from "../../../shared/nearest.ts";
import { listed } from "../../checks/wording.ts";
import type { Explanation, Misfit, Recogniser, Slip } from "../slip.ts";
import { isFile, keywordsWithin, placeOf, type StatementLoop } from "../statement-loops.ts";
import { excerpt, lastOfLine, nameOf, rangeOf, shown, startsLine, type Token, touch } from "../tokens.ts";
import { wordsOfStatement } from "./other-words.ts";

const NAME = /^\p{L}[\p{L}\p{N}_/-]*$/u;

const isKeyword = (token: Token) => nameOf(token.tokenType) === token.image;

/** Whether a word of the grammar is written with letters. */
const isWord = (text: string) => /^[a-z][a-z-]*$/.test(text);

/** `plan Gate {` and `cue Brush the grass`. */
export const missingQuotationMarks: Recogniser = ({ slip, token, index, expected }) => {
  const { tokens } = slip;
  if (token === undefined || !expected.includes("STRING") || startsLine(token, tokens[index - 1])) {
    return undefined;
  }
  if (token.image === "{" || token.image === "}") return undefined;
  const line = tokens.slice(index, lastOfLine(tokens, index) + 1);
  const brace = line.findIndex(({ image }) => image === "{");
  const isHalfQuoted = line.some((each) => each.image.includes('"') && nameOf(each.tokenType) !== "STRING");
  const end = brace >= 0 ? brace : isHalfQuoted ? line.length : endOfText(slip, line);
  const text = line.slice(0, end);
  const closing = text.findIndex(({ image }) => image.includes('"'));
  const words =
    closing >= 0
      ? text.slice(0, closing)
      : brace < 0
        ? text
        : text.filter((word, place) => place === 0 || !isKeyword(word));
  const last = words.at(-1);
  if (last === undefined || words.some((word) => nameOf(word.tokenType) === "STRING")) return undefined;
  if (closing >= 0) return openingMissing(words, text[closing] as Token);
  const range = rangeOf(token, last);
  // `window Path: is …`: what other notations put behind a name goes with it.
  const behind = line[words.length];
  const replaced = behind?.image === ":" && touch(last, behind) ? behind : last;
  const quoted = `"${words.map(({ image }, place) => spaceBefore(words, place) + image).join("")}"`;
  return {
    message: `Texts and names like this one stand in quotation marks: ${excerpt(quoted)}.`,
    range,
    fixes: [
      { title: `Write ${excerpt(quoted)}`, edits: [{ range: rangeOf(token, replaced), newText: quoted }] },
    ],
  };
};

/** Where a text without quotation marks ends: at a word with which its statement goes on, or at a colon. */
function endOfText({ rules, grammar }: Slip, line: readonly Token[]): number {
  const words = keywordsWithin(grammar.rules, rules.at(-1) ?? "");
  const end = line.findIndex(
    (token, place) => place > 0 && (token.image === ":" || (isKeyword(token) && words.includes(token.image))),
  );
  return end < 0 ? line.length : end;
}

/** `plan Gate" {`: the mark that closes the text begins one that is never closed. */
function openingMissing(words: readonly Token[], closing: Token): Explanation | undefined {
  const [first] = words;
  const last = words.at(-1);
  if (first === undefined || last === undefined || !touch(last, closing)) return undefined;
  const start = rangeOf(first).start;
  return {
    message: 'This text has no " at its beginning.',
    range: rangeOf(first, last),
    fixes: [{ title: 'Write " before it', edits: [{ range: { start, end: start }, newText: '"' }] }],
  };
}

function spaceBefore(words: readonly Token[], place: number): string {
  const before = words[place - 1];
  const word = words[place];
  if (before === undefined || word === undefined) return "";
  return " ".repeat(Math.max(0, word.startOffset - before.startOffset - before.image.length));
}

/** `for "7-iron"`. */
export const quotationMarksTooMany: Recogniser = ({ token, expected }) => {
  if (token === undefined || nameOf(token.tokenType) !== "STRING") return undefined;
  const text = token.image.slice(1, -1);
  const isExpected = expected.includes("WORD")
    ? NAME.test(text) || /^\d+-\p{L}+$/u.test(text)
    : expected.includes(text);
  if (!isExpected) return undefined;
  const range = rangeOf(token);
  return {
    message: `This is written without quotation marks: \`${excerpt(text)}\`.`,
    range,
    fixes: [{ title: `Write ${excerpt(text)}`, edits: [{ range, newText: text }] }],
  };
};

/** `tagret` for `target`. */
export const misspelt: Recogniser = (misfit) => {
  const { token } = misfit;
  if (token === undefined || nameOf(token.tokenType) !== "WORD") return undefined;
  const words = [
    runTogether(misfit, token.image),
    ...likely(misfit).map((group) => slipsOf(token.image, group)),
  ];
  const first = words.find((group) => group.length > 0) ?? [];
  const meant = [...new Set(first)].slice(0, 3);
  if (meant.length === 0) return undefined;
  const range = rangeOf(token);
  return {
    message: `\`${shown(token)}\` means nothing here. Did you mean \`${meant[0]}\`?`,
    range,
    fixes: meant.map((word) => ({ title: `Write ${word}`, edits: [{ range, newText: word }] })),
  };
};

function slipsOf(text: string, group: readonly string[]): string[] {
  // Of four letters two others make another word: `easy` is no `least`.
  const most = text.length <= 4 ? 1 : undefined;
  return [...nearest(text, group.filter(isWord), most), ...begunBy(text, group)];
}

/** `targ`, while `target` is being typed. */
function begunBy(text: string, words: readonly string[]): string[] {
  return text.length < 2 ? [] : words.filter((word) => isWord(word) && word.startsWith(text.toLowerCase()));
}

/** `atleast` for `at least`. */
function runTogether({ slip, expected }: Misfit, text: string): string[] {
  const all = new Set([...slip.grammar.rules.values()].flatMap(({ own }) => own));
  return expected
    .filter((word) => isWord(word) && text.startsWith(word) && all.has(text.slice(word.length)))
    .map((word) => `${word} ${text.slice(word.length)}`);
}

/** The words somebody can have meant, the likeliest group first. */
function likely(misfit: Misfit): (readonly string[])[] {
  const { slip, expected } = misfit;
  const { rules } = slip.grammar;
  if (slip.loop === undefined) {
    const own = rules.get(slip.rules.at(-1) ?? "")?.own ?? [];
    return [expected, own];
  }
  if (startsStatement(misfit)) return [expected];
  // A statement on the same line is rarer than a slip in the one before.
  return [wordsOfStatement(slip), expected];
}

function startsStatement({ slip, token, index }: Misfit): boolean {
  return token !== undefined && startsLine(token, slip.tokens[index - 1]);
}

/** `cue "…"` outside a block. */
export const misplaced: Recogniser = (misfit) => {
  const { slip, token } = misfit;
  if (token === undefined || slip.loop === undefined || !startsStatement(misfit)) return undefined;
  const homes = homesOf(misfit, nameOf(token.tokenType));
  if (homes.length === 0) return undefined;
  const isOutside = isFile(slip.loop);
  const here = isOutside ? "" : "directly ";
  const places = listed([...new Set(homes.map(placeOf))], "or");
  return {
    message: `\`${shown(token)}\` cannot stand ${here}${placeOf(slip.loop)}; it belongs ${places}.${isOutside ? " Is there a } too many before it?" : ""}`,
    range: rangeOf(token),
    follows: true,
  };
};

/** Where statements start with this: with what follows, if it tells them apart. */
function homesOf({ slip, index }: Misfit, name: string): StatementLoop[] {
  const { loops, rules, names } = slip.grammar;
  if (names.has(name)) return [];
  const homes = [...loops.values()].filter((loop) => loop !== slip.loop && loop.starters.has(name));
  const next = slip.tokens[index + 1];
  const closer = homes.filter(({ forms }) =>
    [...forms.keys()].some(
      (form) => next !== undefined && rules.get(form)?.own.includes(nameOf(next.tokenType)),
    ),
  );
  return name === "NUMBER" ? closer : homes;
}

/** `10 shots today`. */
export const tooMuch: Recogniser = (misfit) => {
  const { slip, token } = misfit;
  if (token === undefined || slip.loop === undefined || isFile(slip.loop) || startsStatement(misfit))
    return undefined;
  if (isKeyword(token) && wordsOfStatement(slip).includes(token.image)) {
    return {
      message: `The statement is complete before \`${shown(token)}\`, which can stand further to the front of it. Put it there, or take the rest out.`,
      range: rangeOf(token),
    };
  }
  return {
    message: `The statement is complete before \`${shown(token)}\`. Take the rest out, or start a new line for the next one.`,
    range: rangeOf(token),
  };
};

/** Where a name is declared: behind these words and marks, in these rules. */
const DECLARES: ReadonlySet<string> = new Set([
  "metric",
  "dimension",
  "club",
  "unit",
  "positive",
  "negative",
  "right-hander",
]);
const LISTS: ReadonlySet<string> = new Set(["Metric", "Category", "Drill", "Parameter"]);

/** `metric target is …`, `one of long, back`, `drill "Gate" (row: ratio)`. */
export const keywordAsName: Recogniser = ({ slip, token, index, expected }) => {
  const before = slip.tokens[index - 1]?.image ?? "";
  if (token === undefined || !isKeyword(token) || !isWord(token.image) || !expected.includes("WORD"))
    return undefined;
  const isInList = /^(?:,|\(|of)$/.test(before) && slip.rules.some((rule) => LISTS.has(rule));
  if (!DECLARES.has(before) && !isInList) return undefined;
  return {
    message: `\`${token.image}\` is a word of the language and cannot be a name. Choose another, such as \`my-${token.image}\`.`,
    range: rangeOf(token),
  };
};
