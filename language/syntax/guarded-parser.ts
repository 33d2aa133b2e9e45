/** Keeps the parser from being hurt by what is not a plan at all. */
import {
  type AstNode,
  type Grammar,
  GrammarAST,
  type LangiumCoreServices,
  type LangiumParser,
  type ParseResult,
  type ParserOptions,
  prepareLangiumParser,
} from "langium";
import type { NotingLinker } from "../names/linker.ts";
import { engineOf, markedName } from "./engine.ts";
import type { DrillwrightParserErrorMessages } from "./error-messages.ts";
import { finalize } from "./finalize.ts";
import { DEEPEST, LONGEST_TEXT, MOST_OPERATORS } from "./limits.ts";
import { emptyTree, readText } from "./reader/read-text.ts";
import { recoverByStatement } from "./recovery.ts";

/** Thrown out of the parser where a text is more than it should take on. */
class TooComplex extends Error {}

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

/** The framework's parser, which reads on behind a mistake. */
export function createRecoveringParser(services: LangiumCoreServices): LangiumParser {
  const parser = prepareLangiumParser(services);
  const messages = services.parser.ParserErrorMessageProvider as DrillwrightParserErrorMessages;
  recoverByStatement(parser, services.Grammar, () => messages.expected);
  limitComplexity(parser, services.Grammar);
  finalize(parser);
  return parser;
}

/**
 * Gives a text up before the tree is made of it, which would take the square of a chain's length, and before brackets
 * use up the stack: an error there would leave the parser unable to say what it was.
 */
function limitComplexity(parser: LangiumParser, grammar: Grammar): void {
  const engine = engineOf(parser);
  const chains = new Set(grammar.rules.filter(GrammarAST.isInfixRule).map(({ name }) => markedName(name)));
  const repeat = engine.manyInternal.bind(engine);
  engine.manyInternal = (occurrence, round) => {
    if (!chains.has(engine.getCurrRuleFullName())) return repeat(occurrence, round);
    const once = typeof round === "function" ? round : round.DEF;
    let operators = 0;
    repeat(occurrence, () => {
      if (++operators > MOST_OPERATORS) {
        throw new TooComplex(
          `A formula in this file has more than ${MOST_OPERATORS} operators. Split it in two metrics.`,
        );
      }
      once();
    });
  };
  const choose = engine.orInternal.bind(engine);
  engine.orInternal = (alternatives, occurrence) => {
    if (engine.RULE_STACK_IDX > DEEPEST) {
      throw new TooComplex("This file is nested too deeply to be read. Check its brackets.");
    }
    return choose(alternatives, occurrence);
  };
}
