/** The framework's parser, as it is used here: for texts with mistakes, which it explains. */
import {
  type Grammar,
  GrammarAST,
  type LangiumCoreServices,
  type LangiumParser,
  prepareLangiumParser,
} from "langium";
import { engineOf, markedName } from "./engine.ts";
import type { DrillwrightParserErrorMessages } from "./error-messages.ts";
import { finalize } from "./finalize.ts";
import { DEEPEST, MOST_OPERATORS, TooComplex } from "./limits.ts";
import { recoverByStatement } from "./recovery.ts";

/** Makes a parser that reads on behind a mistake. @throws TooComplex out of its `parse` */
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
