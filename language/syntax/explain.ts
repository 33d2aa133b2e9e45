/** What is said about a place where the parser could not go on. */

import type { Fix } from "../checks/check.ts";
import {
  brokenOff,
  type Explanation,
  type Misfit,
  misfitOf,
  type Recogniser,
  type Slip,
  startOfStatement,
} from "./slip.ts";
import { argument, argumentBrackets, parameter, parameterBrackets } from "./slips/arguments.ts";
import { braceTooMany, missingBrace, missingBraceOfList, unclosedBrace } from "./slips/braces.ts";
import { againstWhat, moreThanBefore, noChange, sameAsBefore } from "./slips/changes.ts";
import {
  comparison,
  dateInOtherOrder,
  decimalComma,
  degreeSign,
  mark,
  markByItself,
  marksAround,
  otherQuotationMarks,
  percentInWords,
  power,
  sign,
  timeWithPoint,
  unclosedComment,
  unclosedText,
} from "./slips/characters.ts";
import {
  boundMissing,
  ellipseShare,
  isMissing,
  leastInARow,
  ordinal,
  plusMinusInWords,
  shareOfShots,
  shareOrTotal,
  shotsMissing,
  spansMissing,
  statisticMissing,
  statisticUnknown,
} from "./slips/goals.ts";
import {
  everyShot,
  limitInSentence,
  limitOfAmount,
  limitOfShots,
  nameBehindMetric,
  valueToBeNear,
  withinBothSides,
} from "./slips/limits.ts";
import { arrow, comma, oneOf, thenWithoutBraces, whenMissing } from "./slips/lists.ts";
import { metricBehindNames, notNamed } from "./slips/names.ts";
import { everyGoal, toMissing, unless, verdictOfGoal } from "./slips/next.ts";
import { confidence, kindBeforeName, otherWord, otherWordInside } from "./slips/other-words.ts";
import {
  article,
  bullet,
  clubBeforeShots,
  clubBehindEffort,
  clubRunTogether,
  clubWithoutWith,
  countBehind,
  dashForAnd,
  effortInOtherWords,
  fraction,
  kindBeforeBlock,
  plusMinus,
  rangeInOtherWords,
  sets,
  shotsLeftOut,
  splitDirection,
  splitKind,
  splitName,
  unitBefore,
  unitWithoutIn,
  windFirst,
} from "./slips/phrases.ts";
import {
  carriesMissing,
  columnMissing,
  gateInOtherWords,
  metricInOtherWords,
  patternsTogether,
} from "./slips/records.ts";
import {
  bothOrEither,
  clubsTogether,
  goalsTogether,
  misses,
  noShots,
  rangeOfShots,
  roughlyShots,
  runInOtherWords,
  shotsOnTarget,
  shotsTogether,
} from "./slips/shots.ts";
import { statisticBehind } from "./slips/statistics.ts";
import {
  keywordAsName,
  misplaced,
  missingQuotationMarks,
  misspelt,
  quotationMarksTooMany,
  tooMuch,
} from "./slips/words.ts";
import { isFile, placeOf } from "./statement-loops.ts";
import { nameOf, rangeOf, shown, startsLine, type Token } from "./tokens.ts";

/** Asked in this order; the first that knows the slip has the word. */
const RECOGNISERS: readonly Recogniser[] = [
  markByItself,
  unclosedText,
  otherQuotationMarks,
  unclosedComment,
  comparison,
  percentInWords,
  power,
  decimalComma,
  arrow,
  marksAround,
  bullet,
  kindBeforeBlock,
  windFirst,
  dashForAnd,
  rangeInOtherWords,
  plusMinus,
  plusMinusInWords,
  sign,
  dateInOtherOrder,
  timeWithPoint,
  degreeSign,
  thenWithoutBraces,
  shotsLeftOut,
  parameterBrackets,
  braceTooMany,
  missingBrace,
  missingBraceOfList,
  otherWordInside,
  unclosedBrace,
  kindBeforeName,
  columnMissing,
  gateInOtherWords,
  everyGoal,
  againstWhat,
  missingQuotationMarks,
  quotationMarksTooMany,
  parameter,
  argument,
  argumentBrackets,
  clubsTogether,
  patternsTogether,
  comma,
  oneOf,
  carriesMissing,
  metricInOtherWords,
  metricBehindNames,
  notNamed,
  ordinal,
  shareOrTotal,
  leastInARow,
  whenMissing,
  toMissing,
  unless,
  verdictOfGoal,
  bothOrEither,
  goalsTogether,
  shotsTogether,
  rangeOfShots,
  roughlyShots,
  clubBeforeShots,
  clubBehindEffort,
  effortInOtherWords,
  runInOtherWords,
  noShots,
  misses,
  shotsOnTarget,
  withinBothSides,
  limitOfShots,
  limitInSentence,
  limitOfAmount,
  moreThanBefore,
  noChange,
  sameAsBefore,
  valueToBeNear,
  everyShot,
  ellipseShare,
  spansMissing,
  statisticBehind,
  boundMissing,
  statisticUnknown,
  statisticMissing,
  shotsMissing,
  shareOfShots,
  isMissing,
  fraction,
  confidence,
  otherWord,
  clubWithoutWith,
  unitWithoutIn,
  sets,
  shotsLeftOut,
  splitDirection,
  splitKind,
  clubRunTogether,
  article,
  splitName,
  nameBehindMetric,
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
const MOST_EXPECTATIONS = 14;

export function explain(slip: Slip): Explanation {
  const misfit = misfitToExplain(misfitOf(slip));
  for (const recognise of RECOGNISERS) {
    const explanation = recognise(misfit);
    if (explanation !== undefined) return explanation;
  }
  return unexpected(misfit);
}

/**
 * A line that starts with a name can be one of many things until its second word, and then it is that word which does not
 * fit. Where the first was meant to be a word of the language, or begins no line, it is the first that is wrong.
 */
function misfitToExplain(misfit: Misfit): Misfit {
  const start = startOfStatement(misfit);
  if (start === undefined) return misfit;
  const { token, index, slip } = start;
  const before = slip.tokens[index - 1];
  if (!startsLine(token, before)) return before?.image === "{" ? misfit : start;
  if (!slip.grammar.names.has(nameOf(token.tokenType))) return misfit;
  // Only in a drill does a name say how many shots.
  if (slip.loop?.starters.has("leave") && !slip.rules.includes("Drill")) {
    return { ...start, expected: start.expected.filter((name) => !slip.grammar.names.has(name)) };
  }
  const isMeant = otherWord(start) !== undefined || misspelt(start) !== undefined;
  return isMeant && otherWord(misfit) === undefined && misspelt(misfit) === undefined ? start : misfit;
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

function unexpected(misfit: Misfit): Explanation {
  const { slip, token, expected } = misfit;
  if (token === undefined) {
    // A file of nothing but comments has no errors, so there is a last token.
    const last = slip.tokens.at(-1) as Token;
    return { message: `Something is missing at the end: ${list(expected)}.`, range: rangeOf(last) };
  }
  const { loop } = slip;
  const message =
    loop === undefined
      ? `Found \`${shown(token)}\` where ${list(expected)} was expected.`
      : isFile(loop)
        ? `Found \`${shown(token)}\` where a declaration was expected: ${list(expected)}.`
        : `Found \`${shown(token)}\`. A statement ${placeOf(loop)} starts with ${list(expected)}.`;
  return { message, range: rangeOf(token), fixes: wordLeftOut(misfit, token) };
}

/** `3 in row`: where the rule writes down the missing word and then the one that is there, it was left out. */
function wordLeftOut({ slip, expected }: Misfit, token: Token): Fix[] {
  const [word] = expected;
  const own = slip.grammar.rules.get(slip.rules.at(-1) ?? "")?.own ?? [];
  if (word === undefined || expected.length > 1 || own[own.indexOf(word) + 1] !== token.image) return [];
  const { start } = rangeOf(token);
  return [{ title: `Write ${word}`, edits: [{ range: { start, end: start }, newText: `${word} ` }] }];
}

/** Names of the terminals for people; everything else is a word of the grammar and stands for itself. */
const TERMINALS: Readonly<Record<string, string>> = {
  WORD: "a name",
  STRING: 'a text in "…"',
  NUMBER: "a number",
  DATE: "a date such as 2026-10-12",
  TIME: "a time such as 10:42",
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
