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
import { recoverByStatement } from "./recovery.ts";

/** Longest text that is parsed, in UTF-16 code units. The syntax tree takes about a hundred times as much memory. */
export const LONGEST_TEXT = 1_000_000;

/** Most operators of one formula. Each makes the tree deeper, and looking up a name costs the depth it stands at. */
export const MOST_OPERATORS = 200;

/** Deepest nesting of rules. Only brackets in formulas nest, three rules each. */
const DEEPEST = 200;

/** Thrown out of the parser where a text is more than it should take on. */
class TooComplex extends Error {}

/** A parser that answers every text with a tree: an empty one and an error where the text is too long or nested too deeply. */
export function createGuardedParser(services: LangiumCoreServices): LangiumParser {
  const guarded = createRecoveringParser(services);
  const linker = services.references.Linker as NotingLinker;
  let parse = guarded.parse.bind(guarded);
  guarded.parse = <T extends AstNode>(text: string, options?: ParserOptions): ParseResult<T> => {
    const problem = tooLong(text);
    if (problem !== undefined) return refused(text, parse<T>(""), problem);
    try {
      const result = parse<T>(text, options);
      linker.claim(result.value);
      return result;
    } catch (error) {
      if (!(error instanceof TooComplex)) throw error;
      const fresh = createRecoveringParser(services); // the old one was left in the middle of its work
      parse = fresh.parse.bind(fresh);
      return refused(text, parse<T>(""), error.message);
    }
  };
  return guarded;
}

/** What to say of a text that is too long to be parsed; undefined for any other. */
export function tooLong({ length }: string): string | undefined {
  return length <= LONGEST_TEXT
    ? undefined
    : `This file has ${length} characters; a plan file may have ${LONGEST_TEXT}. Split it, or leave it out of the folder.`;
}

function createRecoveringParser(services: LangiumCoreServices): LangiumParser {
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

/** An empty tree that still knows its text: the framework asks for it to see whether a file has changed. */
function refused<T extends AstNode>(text: string, empty: ParseResult<T>, message: string): ParseResult<T> {
  Object.defineProperty(empty.value.$cstNode?.root ?? {}, "fullText", { value: text });
  const token = { image: "", startOffset: 0, tokenTypeIdx: 0, tokenType: { name: "file" } };
  const context = { ruleStack: [], ruleOccurrenceStack: [] };
  return { ...empty, parserErrors: [{ name: "Refused", message, token, resyncedTokens: [], context }] };
}
