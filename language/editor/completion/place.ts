/** Where something is to be offered. */
import type { LangiumDocument } from "langium";
import type { CompletionItem, InsertReplaceEdit, TextEdit } from "vscode-languageserver";
import { escapedText, textLiteral } from "../../../shared/text-literal.ts";
import type { Document } from "../../generated/tree/ast.ts";
import type { Expectation } from "./expectations.ts";
import type { Token } from "./typing.ts";

export interface Place {
  readonly document: LangiumDocument<Document>;
  readonly token: Token;
  /** What stands of the statement in front of the token. */
  readonly statement: string;
  /** What opened the braces around it, outermost first: `plan "Gate" {`. */
  readonly openings: readonly string[];
  readonly expected: readonly Expectation[];
  readonly client: ClientAbilities;
  readonly matches: (name: string) => boolean;
}

/** What the editor can do with an offer. */
export interface ClientAbilities {
  readonly snippets: boolean;
  readonly insertReplace: boolean;
}

/** What is offered at a place. */
export interface Offers {
  readonly items: readonly CompletionItem[];
  /** More would be offered if more were typed. */
  readonly isIncomplete: boolean;
}

export const NOTHING: Offers = { items: [], isIncomplete: false };

/** Groups of offers, in the order in which they are listed. */
export const RANK = { names: "1", phrases: "2", snippets: "3", others: "4" } as const;

/** Sorts an offer into its group; within the group by `index`. */
export function sortText(rank: (typeof RANK)[keyof typeof RANK], index: number): string {
  return rank + String(index).padStart(4, "0");
}

/** Puts a word in the place of the one at the cursor; apart from what it would run into, but for a degree sign. */
export function wordEdit({ document, token, client }: Place, word: string): TextEdit | InsertReplaceEdit {
  const before = document.textDocument.getText().charAt(token.start - 1);
  const runsOn = token.typed === "" && /[\p{L}\p{N}°%"}]/u.test(before) && !word.startsWith("°");
  const newText = runsOn ? ` ${word}` : word;
  const start = document.textDocument.positionAt(token.start);
  const cursor = document.textDocument.positionAt(token.start + token.typed.length);
  if (!client.insertReplace) return { newText, range: { start, end: cursor } };
  const end = document.textDocument.positionAt(token.end);
  return { newText, insert: { start, end: cursor }, replace: { start, end } };
}

/** Puts a text in the place of the one at the cursor, with the quotation marks that are still missing. */
export function textEdit(place: Place, text: string): TextEdit | InsertReplaceEdit {
  const { token, document } = place;
  if (token.quotes === "none") return wordEdit(place, textLiteral(text));
  const range = {
    start: document.textDocument.positionAt(token.start),
    end: document.textDocument.positionAt(token.end),
  };
  return { newText: token.quotes === "open" ? `${escapedText(text)}"` : escapedText(text), range };
}
