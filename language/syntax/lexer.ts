import { DefaultLexer, type LangiumCoreServices, type Lexer } from "langium";

/** The framework's lexer of the grammar's tokens. */
export function createLexer(services: LangiumCoreServices): Lexer {
  return new DefaultLexer(services);
}
