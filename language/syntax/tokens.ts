/** Tokens of a text, and the ranges they span. */
import type { Lexer, LexerResult } from "langium";
import type { TextRange } from "../checks/check.ts";

export type TokenType = Lexer["definition"][string];
export type Token = LexerResult["tokens"][number];

/** The end of the file is a token without a place. */
export function hasPlace(token: Token | undefined): token is Token {
  return token !== undefined && Number.isFinite(token.startOffset) && token.startOffset >= 0;
}

/** From the start of one token to the end of another. */
export function rangeOf(first: Token, last: Token = first): TextRange {
  return {
    start: { line: (first.startLine ?? 1) - 1, character: (first.startColumn ?? 1) - 1 },
    end: { line: (last.endLine ?? 1) - 1, character: last.endColumn ?? 1 },
  };
}

/** Whether two tokens stand next to each other without a space. */
export function touch(first: Token, second: Token): boolean {
  return first.startOffset + first.image.length === second.startOffset;
}

/** Whether a token is the first of its line. */
export function startsLine(token: Token, before: Token | undefined): boolean {
  return !hasPlace(before) || (token.startLine ?? 1) > (before.endLine ?? 1);
}

/** The index of the first token of the line on which the token at `index` stands. */
export function firstOfLine(tokens: readonly Token[], index: number): number {
  let first = index;
  while (first > 0 && !startsLine(tokens[first] as Token, tokens[first - 1])) first--;
  return first;
}

/** The index of the last token of that line. */
export function lastOfLine(tokens: readonly Token[], index: number): number {
  let last = index;
  while (last + 1 < tokens.length && !startsLine(tokens[last + 1] as Token, tokens[last])) last++;
  return last;
}

/** What the framework adds to a keyword that has the name of a terminal. */
const KEYWORD = ":KW";

/** The name of a token type as the grammar has it: the text of a keyword, or the name of a terminal. */
export function nameOf(type: TokenType): string {
  const { name } = type;
  return name.endsWith(KEYWORD) ? name.slice(0, -KEYWORD.length) : name; // asked at every step of the parser
}

/** How much of a text a message repeats: what somebody cannot have meant can be as long as the file. */
const LONGEST_EXCERPT = 60;

/** The beginning of a text, for a message. */
export function excerpt(text: string): string {
  return text.length > LONGEST_EXCERPT ? `${text.slice(0, LONGEST_EXCERPT)}…` : text;
}

/** A token in a message. */
export function shown({ image }: Token): string {
  return excerpt(image);
}
