/** How something moved, in everyday words: `against last session`, `carry is 5 yd more than "Base"`, `carry +5 yd`. */
import type { Recogniser } from "../slip.ts";
import { rangeOf, type Token } from "../tokens.ts";
import { amountAt, isWord, lastOf, nearby, rewrite, wordsOf } from "./nearby.ts";

/** What is said behind `against`, and what it is called here. */
const AGAINST: readonly (readonly [said: RegExp, meant: string])[] = [
  [/^(?:the |our )?(?:last|previous) (?:time|session|visit|practice)(?= |$)/, "the last session"],
  [/^(?:a |my |our )?baseline(?= |$)/, "the baseline"],
  [/^(?:the|my|your|his|her|their) usual(?: numbers?| value)?(?= |$)/, "usual"],
];

/** `against baseline`, `against last session`, `against the usual`. */
export const againstWhat: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const isBehindThe = before?.image === "the";
  const opener = isBehindThe ? misfit.slip.tokens[misfit.index - 2] : before;
  const said = isBehindThe ? [before, ...line] : line;
  const [first] = said;
  if (first === undefined || opener?.image !== "against") return undefined;
  for (const [phrase, text] of AGAINST) {
    const match = phrase.exec(wordsOf(said))?.[0];
    if (match === undefined || match === text) continue;
    const last = lastOf(match, said);
    return rewrite(`\`${match}\` is \`${text}\` here.`, first, last, text);
  }
  return undefined;
};

/** Words for more and for less, and for what a change of them is called. */
const MOVES: Readonly<Record<string, string>> = {
  more: "gains",
  longer: "gains",
  higher: "gains",
  faster: "gains",
  "+": "gains",
  less: "loses",
  shorter: "loses",
  lower: "loses",
  slower: "loses",
  "-": "loses",
};

/** `carry is 5 yd more than "Base"`, `carry 5 yd longer than "Base"`, `carry +5 yd against "Base"`. */
export const moreThanBefore: Recogniser = (misfit) => {
  const { before: metric, line } = nearby(misfit);
  if (!isWord(metric) || !misfit.expected.includes("gains")) return undefined;
  const place = line[0]?.image === "is" ? 1 : 0;
  const sign = MOVES[line[place]?.image ?? ""];
  const amount = amountAt(line, sign === undefined ? place : place + 1);
  if (amount === undefined) return undefined;
  const behind = place + (sign === undefined ? 0 : 1) + amount.length;
  const move = sign ?? MOVES[line[behind]?.image ?? ""];
  const joint = line[sign === undefined ? behind + 1 : behind];
  if (move === undefined || !/^(?:than|against)$/.test(joint?.image ?? "")) return undefined;
  const text = `${move} ${amount.text} against`;
  return rewrite(
    `A change is written \`${metric.image} ${text} …\`.`,
    line[0] as Token,
    joint as Token,
    text,
  );
};

/** `carry does not fall against "Base"`. */
const NO_MOVE = /^(?:does not|doesn ' t|must not|may not|should not|cannot) (?<verb>\p{L}+)(?: by)?(?= )/u;

export const noChange: Recogniser = (misfit) => {
  const { before: metric, line } = nearby(misfit);
  const [first] = line;
  if (first === undefined || !isWord(metric) || !misfit.expected.includes("gains")) return undefined;
  const match = NO_MOVE.exec(wordsOf(line));
  if (match === null) return undefined;
  const falls = /^(?:fall|drop|decrease|shrink|lose)s?$/.test(match.groups?.verb ?? "");
  const rises = /^(?:rise|grow|increase|gain)s?$/.test(match.groups?.verb ?? "");
  if (!falls && !rises) return undefined;
  const last = lastOf(match[0], line);
  const text = `${falls ? "loses" : "gains"} no more than`;
  return {
    message: `How little it may move is said with an amount: \`${metric.image} ${text} … against …\`.`,
    range: rangeOf(first, last),
  };
};

/** `carry stays the same as "Base"`, `carry is the same as "Base"`. */
export const sameAsBefore: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const isStay = before?.image === "stays" || before?.image === "is";
  const said = isStay ? [before, ...line] : line;
  const match = /^(?:stays|is|remains) (?:the )?(?:same|unchanged|equal)(?: (?:as|to))?(?= |$)/.exec(
    wordsOf(said),
  );
  const [first] = said;
  if (first === undefined || match === null) return undefined;
  const last = lastOf(match[0], said);
  return {
    message: "How little it may move is said with an amount: `stays within … against …`.",
    range: rangeOf(first, last),
  };
};
