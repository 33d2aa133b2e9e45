/** Keeps the parser from being hurt by what is not a plan at all. */
import type { AstNode, LangiumCoreServices, LangiumParser, ParseResult, ParserOptions } from "langium";
import type { NotingLinker } from "../names/linker.ts";
import { LONGEST_TEXT, TooComplex } from "./limits.ts";
import { emptyTree, readText } from "./reader/read-text.ts";
import { createRecoveringParser } from "./recovering-parser.ts";

/**
 * A parser that answers every text with a tree: an empty one and an error where the text is too long or nested too deeply.
 * A text without a mistake is read by the reader that is written from the grammar. The framework's parser is made when the
 * first text comes that has to be explained.
 */
export function createGuardedParser(services: LangiumCoreServices): LangiumParser {
  const linker = services.references.Linker as NotingLinker;
  const grammar = () => services.Grammar;
  let explaining: LangiumParser | undefined;

  const explain = <T extends AstNode>(text: string, options?: ParserOptions): ParseResult<T> => {
    explaining ??= createRecoveringParser(services);
    try {
      return explaining.parse<T>(text, options);
    } catch (error) {
      if (!(error instanceof TooComplex)) throw error;
      explaining = undefined; // it was left in the middle of its work
      return refused<T>(text, error.message);
    }
  };
  const refused = <T extends AstNode>(text: string, message: string): ParseResult<T> => {
    const token = { image: "", startOffset: 0, tokenTypeIdx: 0, tokenType: { name: "file" } };
    const context = { ruleStack: [], ruleOccurrenceStack: [] };
    const error = { name: "Refused", message, token, resyncedTokens: [], context };
    return { value: emptyTree(text, linker, grammar) as T, lexerErrors: [], parserErrors: [error] };
  };
  const parse = <T extends AstNode>(text: string, options?: ParserOptions): ParseResult<T> => {
    const problem = tooLong(text);
    if (problem !== undefined) return refused(text, problem);
    const value = options?.rule === undefined ? readText(text, linker, grammar) : undefined;
    if (value !== undefined) return { value: value as T, lexerErrors: [], parserErrors: [] };
    linker.forget();
    return explain(text, options);
  };
  const claimed = <T extends AstNode>(text: string, options?: ParserOptions): ParseResult<T> => {
    const result = parse<T>(text, options);
    linker.claim(result.value);
    return result;
  };
  return { parse: claimed } as LangiumParser; // the framework asks for no more
}

/** What to say of a text that is too long to be parsed; undefined for any other. */
export function tooLong({ length }: string): string | undefined {
  return length <= LONGEST_TEXT
    ? undefined
    : `This file has ${length} characters; a plan file may have ${LONGEST_TEXT}. Split it, or leave it out of the folder.`;
}
