/**
 * What is being typed, found in the text alone: the word or text at the cursor, and the braces around it. A mistake
 * elsewhere in the file does not matter, and the file's length hardly does.
 */
import { textParts, withoutComments } from "../text-parts.ts";
import { statementStarts } from "./statement-starts.ts";

/** The word or text at the cursor. Offsets into the file's text. */
export interface Token {
  /** Where it starts; for a text, behind the opening quotation mark. */
  readonly start: number;
  /** Where it ends, which can be behind the cursor; for a text, before the closing quotation mark. */
  readonly end: number;
  /** What of it stands in front of the cursor. */
  readonly typed: string;
  /** Whether it stands in quotation marks, and then whether the closing one is there. */
  readonly quotes: "none" | "open" | "closed";
}

export interface Typing {
  /** What may be meant at the cursor: the word that is being typed, and where that can be complete, the one after it. */
  readonly tokens: readonly Token[];
  /** For each pair of braces around the cursor, outermost first: what stands between the brace before it and its own. */
  readonly openings: readonly string[];
  /** Where the innermost body starts: behind the last brace. */
  readonly bodyStart: number;
}

/**
 * Undefined inside a comment, where nothing is completed. Linear in the text before the cursor, but fast.
 *
 * @param declarations the words that begin a declaration. None stands inside another, however many braces are missing.
 */
export function typingAt(
  text: string,
  offset: number,
  declarations: ReadonlySet<string>,
): Typing | undefined {
  const openings: { readonly from: number; readonly end: number }[] = [];
  let bodyStart = 0;
  let token: Token | undefined;
  for (const { kind, start, end, isClosed } of textParts(text)) {
    if (start >= offset) break;
    // At its end the cursor is still in what has no closing mark.
    const isInside = offset < end || (offset === end && (!isClosed || kind === "line comment"));
    if (kind === "line comment" || kind === "comment") {
      if (isInside) return undefined;
    } else if (kind === "text") {
      if (isInside) token = textAt(text, start, isClosed ? end - 1 : undefined, offset);
    } else {
      if (kind === "{") {
        const opening = { from: bodyStart, end };
        if (declarations.has(firstWord(text, opening))) openings.length = 0;
        openings.push(opening);
      } else openings.pop();
      bodyStart = end;
    }
  }
  const lineStart = Math.max(bodyStart, text.lastIndexOf("\n", offset - 1) + 1);
  const tokens = token === undefined ? wordsAt(text, lineStart, offset) : [token];
  return {
    tokens,
    openings: openings.map(({ from, end }) => withoutComments(text.slice(from, end))),
    bodyStart,
  };
}

/** The first word of what opens a brace: mostly of its line. */
function firstWord(text: string, { from, end }: { readonly from: number; readonly end: number }): string {
  const lineStart = Math.max(from, text.lastIndexOf("\n", end - 1) + 1);
  let statement = text.slice(lineStart, end);
  const hasOwnLine = statement.trim() !== "{" && !text.slice(from, lineStart).trimEnd().endsWith(",");
  if (!hasOwnLine) [statement = ""] = statementStarts(withoutComments(text.slice(from, end)));
  return /\p{L}+/u.exec(statement)?.[0] ?? "";
}

/** @param end where the closing mark stands; without one nobody knows where the text was meant to end. */
function textAt(text: string, start: number, end: number | undefined, offset: number): Token {
  return {
    start: start + 1,
    end: end ?? offset,
    typed: text.slice(start + 1, offset),
    quotes: end === undefined ? "open" : "closed",
  };
}

const WORD_BEFORE = /(?:[\p{L}\p{N}_°%][\p{L}\p{N}_°%/.-]*)?$/u;
const WORD_AFTER = /[\p{L}\p{N}_°%/-]*/uy;
const NUMBER = /^\d+(?:\.\d*)?(?!-)/;

function wordsAt(text: string, from: number, offset: number): Token[] {
  const before = WORD_BEFORE.exec(text.slice(from, offset))?.[0] ?? "";
  const number = NUMBER.exec(before)?.[0] ?? "";
  const next = word(text, offset, "");
  if (before === "") return [next];
  // A unit may follow a number without a space: in `2°` the word is `°`.
  if (number.length === before.length) return [word(text, offset, before), next];
  const current = word(text, offset, before.slice(number.length));
  return /[°%]$/.test(before) ? [current, next] : [current];
}

function word(text: string, offset: number, typed: string): Token {
  WORD_AFTER.lastIndex = offset;
  const rest = WORD_AFTER.exec(text)?.[0] ?? "";
  return { start: offset - typed.length, end: offset + rest.length, typed, quotes: "none" };
}
