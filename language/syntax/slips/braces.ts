/** Braces that are missing, or one too many. */
import type { GrammarWords, Recogniser, Slip } from "../slip.ts";
import { isFile } from "../statement-loops.ts";
import { firstOfLine, hasPlace, lastOfLine, nameOf, rangeOf, startsLine, type Token } from "../tokens.ts";
import { otherWord } from "./other-words.ts";

/** Statements of a block whose { is not there. */
export const missingBrace: Recogniser = ({ slip, token, index, expected }) => {
  const { tokens } = slip;
  if (token === undefined || !startsLine(token, tokens[index - 1])) return undefined;
  if (slip.loop === undefined && expected.join() !== "{") return undefined;
  const start = startOfHome(slip, index);
  if (start === undefined) return undefined;
  const opener = tokens[start] as Token;
  const last = tokens[lastOfLine(tokens, start)] as Token;
  const { end } = rangeOf(last);
  return {
    message: `The { of this \`${opener.image}\` is missing at the end of its line.`,
    range: rangeOf(opener, last),
    follows: true,
    fixes: [{ title: "Write {", edits: [{ range: { start: end, end }, newText: " {" }] }],
  };
};

/** The line without a { that opens what the statement at `index`, and those between, belong to. */
function startOfHome({ tokens, grammar, loop }: Slip, index: number): number | undefined {
  const starts = [nameOf((tokens[index] as Token).tokenType)];
  for (let at = index; at > 0; ) {
    at = firstOfLine(tokens, at - 1);
    const opener = tokens[at] as Token;
    const home = [...grammar.loops.values()].find(({ openers }) => openers.includes(opener.image));
    if (home === undefined) {
      starts.push(nameOf(opener.tokenType));
      continue;
    }
    const line = tokens.slice(at, lastOfLine(tokens, at) + 1);
    // The `plan "Gate"` of a session opens nothing.
    const isLine = loop !== undefined && !isFile(loop) && loop.starters.has(opener.image);
    const isOpen =
      home !== loop && !isLine && opener.image !== LIST && !line.some(({ image }) => image === "{");
    return isOpen && starts.every((name) => home.starters.has(name)) ? at : undefined;
  }
  return undefined;
}

/** Several criteria behind a `success` without a {, which is a success of one. */
export const missingBraceOfList: Recogniser = (misfit) => {
  const { slip, index } = misfit;
  const { tokens, grammar } = slip;
  if (otherWord(misfit) !== undefined) return undefined; // no criterion, but another line of the block
  const list = [...grammar.loops.values()].find(({ openers }) => openers.includes(LIST));
  if (list === undefined || index >= tokens.length || slip.rules.includes("Success")) return undefined;
  let first = firstOfLine(tokens, index);
  while (first > 0 && list.starters.has(nameOf((tokens[first] as Token).tokenType))) {
    first = firstOfLine(tokens, first - 1);
  }
  const opener = tokens[first] as Token;
  const line = tokens.slice(first, lastOfLine(tokens, first) + 1);
  if (
    opener.image !== LIST ||
    line.includes(tokens[index] as Token) ||
    line.some(({ image }) => image === "{")
  ) {
    return undefined;
  }
  const { end } = rangeOf(opener);
  return {
    message: `The { of this \`${LIST}\` is missing: without it there is one criterion.`,
    range: rangeOf(opener),
    follows: true,
    fixes: [{ title: "Write {", edits: [{ range: { start: end, end }, newText: " {" }] }],
  };
};

/** The word behind which one statement needs no braces, and several do. */
const LIST = "success";

/** A block that is still open where the next one starts, or where the file ends. */
export const unclosedBrace: Recogniser = ({ slip, token, index, expected }) => {
  if (!expected.includes("}") || (token !== undefined && !startsLine(token, slip.tokens[index - 1]))) {
    return undefined;
  }
  const open = unclosedBefore(slip, index);
  const last = slip.tokens[index - 1];
  if (open === undefined || !hasPlace(last)) return undefined;
  const opening = slip.tokens[open] as Token;
  const first = slip.tokens[firstOfLine(slip.tokens, open)];
  const indentation = " ".repeat((first?.startColumn ?? 1) - 1);
  const { end } = rangeOf(last);
  return {
    message: `This { is not closed. Put a } below the last line that belongs to ${nameOfPart(slip.tokens, open)}.`,
    range: rangeOf(opening),
    // Where the } of a part inside closed this one, it is the inner part that the } was meant for: no place is certain.
    fixes: isInnermost(slip.tokens, open, index)
      ? [
          {
            title: "Close it here",
            edits: [{ range: { start: end, end }, newText: `\n${indentation}}` }],
          },
        ]
      : [],
  };
};

export const braceTooMany: Recogniser = ({ slip, token }) => {
  if (token?.image !== "}" || slip.loop === undefined) return undefined;
  const range = rangeOf(token);
  return {
    message: "This } is one too many: nothing is open here. Take it out, or look for one too many above.",
    range,
    follows: true,
    fixes: [{ title: "Take it out", edits: [{ range, newText: "" }] }],
  };
};

/**
 * The { that lacks its }: of a pair whose } stands further left than the line of its {, that {, because the } was
 * meant for a part around it. Where all pairs fit, the last { that is open.
 */
function unclosedBefore({ tokens, grammar }: Slip, end: number): number | undefined {
  const open: number[] = [];
  for (let index = startOfDeclaration(tokens, grammar, end); index < end; index++) {
    const token = tokens[index] as Token;
    if (token.image === "{") open.push(index);
    if (token.image !== "}") continue;
    const opening = open.pop();
    if (opening === undefined || !startsLine(token, tokens[index - 1])) continue;
    if ((token.startColumn ?? 1) < (tokens[firstOfLine(tokens, opening)]?.startColumn ?? 1)) return opening;
  }
  return open.at(-1);
}

/** The last declaration that starts before `end`, going by what stands at the very left. */
function startOfDeclaration(tokens: readonly Token[], { loops }: GrammarWords, end: number): number {
  const file = [...loops.values()].find(isFile);
  for (let index = end - 1; index > 0; index--) {
    const token = tokens[index] as Token;
    if (token.startColumn === 1 && file?.starters.has(token.image)) return index;
  }
  return 0;
}

function isInnermost(tokens: readonly Token[], open: number, end: number): boolean {
  let depth = 0;
  for (let index = open; index < end; index++) {
    if (tokens[index]?.image === "{") depth++;
    if (tokens[index]?.image === "}" && --depth === 0) return false;
  }
  return true;
}

/** `block "Gate"`: the words between the start of the line and the brace. */
function nameOfPart(tokens: readonly Token[], open: number): string {
  const words: string[] = [];
  for (let index = open - 1; index >= 0 && words.length < 2; index--) {
    const token = tokens[index] as Token;
    if (token.image.startsWith('"') || startsLine(token, tokens[index - 1])) words.unshift(token.image);
    if (startsLine(token, tokens[index - 1])) break;
  }
  return words.length === 0 ? "it" : words.join(" ");
}
