/** What is said about a place where the parser could not go on. */
import { brokenOff, type Explanation, type Misfit, misfitOf, type Recogniser, type Slip } from "./slip.ts";
import { braceTooMany, missingBrace, unclosedBrace } from "./slips/braces.ts";
import {
  comparison,
  dateInOtherOrder,
  decimalComma,
  mark,
  otherQuotationMarks,
  percentInWords,
  sign,
  unclosedComment,
  unclosedText,
} from "./slips/characters.ts";
import {
  boundMissing,
  bullet,
  countBehind,
  dashForAnd,
  dashForBetween,
  fraction,
  plusMinus,
  splitName,
  unitBefore,
} from "./slips/phrases.ts";
import {
  keywordAsName,
  misplaced,
  missingQuotationMarks,
  misspelt,
  quotationMarksTooMany,
  tooMuch,
} from "./slips/words.ts";
import { rangeOf, shown, type Token } from "./tokens.ts";

/** Asked in this order; the first that knows the slip has the word. */
const RECOGNISERS: readonly Recogniser[] = [
  unclosedText,
  otherQuotationMarks,
  unclosedComment,
  comparison,
  percentInWords,
  decimalComma,
  bullet,
  dashForAnd,
  dashForBetween,
  plusMinus,
  sign,
  dateInOtherOrder,
  braceTooMany,
  missingBrace,
  unclosedBrace,
  missingQuotationMarks,
  quotationMarksTooMany,
  boundMissing,
  fraction,
  splitName,
  countBehind,
  unitBefore,
  keywordAsName,
  misspelt,
  misplaced,
  mark,
  tooMuch,
  somethingMissing,
];

/** How many of the possible continuations a message lists. */
const MOST_EXPECTATIONS = 12;

export function explain(slip: Slip): Explanation {
  const misfit = misfitOf(slip);
  for (const recognise of RECOGNISERS) {
    const explanation = recognise(misfit);
    if (explanation !== undefined) return explanation;
  }
  return unexpected(misfit);
}

/** A statement that ends too early. */
function somethingMissing(misfit: Misfit): Explanation | undefined {
  const before = brokenOff(misfit);
  if (before === undefined) return undefined;
  const { expected } = misfit;
  const range = rangeOf(before);
  const [word] = expected;
  const isCertain = word !== undefined && expected.length === 1 && TERMINALS[word] === undefined;
  return {
    message: `Behind \`${shown(before)}\` something is missing: ${list(expected)}.`,
    range,
    fixes: isCertain
      ? [
          {
            title: `Write ${word}`,
            edits: [{ range: { start: range.end, end: range.end }, newText: ` ${word}` }],
          },
        ]
      : [],
  };
}

function unexpected({ slip, token, expected }: Misfit): Explanation {
  if (token === undefined) {
    // A file of nothing but comments has no errors, so there is a last token.
    const last = slip.tokens.at(-1) as Token;
    return { message: `Something is missing at the end: ${list(expected)}.`, range: rangeOf(last) };
  }
  const opener = slip.loop?.opener;
  const message =
    slip.loop === undefined
      ? `Found \`${shown(token)}\` where ${list(expected)} was expected.`
      : opener === undefined
        ? `Found \`${shown(token)}\` where a declaration was expected: ${list(expected)}.`
        : `Found \`${shown(token)}\`. A statement in a \`${opener}\` starts with ${list(expected)}.`;
  return { message, range: rangeOf(token) };
}

/** Names of the terminals for people; everything else is a word of the grammar and stands for itself. */
const TERMINALS: Readonly<Record<string, string>> = {
  WORD: "a name",
  STRING: 'a text in "…"',
  NUMBER: "a number",
  DATE: "a date such as 2026-10-12",
  EOF: "the end of the file",
};

function list(expected: readonly string[]): string {
  const isName = expected.includes("WORD"); // `effort` is one, which helps nobody
  const words = expected
    .filter((name) => !isName || name !== "effort")
    .map((name) => TERMINALS[name] ?? `\`${name}\``);
  if (words.length > MOST_EXPECTATIONS) return `${words.slice(0, MOST_EXPECTATIONS).join(", ")}, …`;
  const last = words.pop() ?? "nothing more";
  return words.length === 0 ? last : `${words.join(", ")} or ${last}`;
}
