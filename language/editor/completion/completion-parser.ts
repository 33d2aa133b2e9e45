/** The framework's parser for completion. It does not recover: what is looked for is how a text goes on, not how to get over a mistake. */
import { createParser, LangiumCompletionParser, type LangiumCoreServices } from "langium";

export function createCompletionParser(services: LangiumCoreServices): LangiumCompletionParser {
  const config = { ...services.parser.ParserConfig, recoveryEnabled: false };
  const parserServices = Object.create(services.parser, { ParserConfig: { value: config } });
  const parser = new LangiumCompletionParser(Object.create(services, { parser: { value: parserServices } }));
  createParser(services.Grammar, parser, services.parser.Lexer.definition);
  parser.finalize();
  return parser;
}
