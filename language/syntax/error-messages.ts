/** What the parser and the lexer say when they cannot go on, in a coach's words. */
import { AbstractParserErrorMessageProvider, DefaultLexerErrorMessageProvider } from "langium";

type Token = { readonly image: string };
type TokenType = { readonly name: string };

/** How many of the possible continuations a message lists. */
const MOST_EXPECTATIONS = 12;

export class DrillwrightParserErrorMessages extends AbstractParserErrorMessageProvider {
  override buildMismatchTokenMessage({ expected, actual }: { expected: TokenType; actual: Token }): string {
    return `Found ${found(actual)} where ${describe(expected)} was expected.`;
  }

  override buildNoViableAltMessage(options: {
    expectedPathsPerAlt: TokenType[][][];
    actual: Token[];
  }): string {
    return unexpected(options.actual[0], options.expectedPathsPerAlt.flat());
  }

  override buildEarlyExitMessage(options: {
    expectedIterationPaths: TokenType[][];
    actual: Token[];
  }): string {
    return unexpected(options.actual[0], options.expectedIterationPaths);
  }

  override buildNotAllInputParsedMessage({ firstRedundant }: { firstRedundant: Token }): string {
    return `Found ${found(firstRedundant)} where a declaration was expected, such as \`plan "Name" { … }\`. Is there a } too many before it?`;
  }
}

export class DrillwrightLexerErrorMessages extends DefaultLexerErrorMessageProvider {
  override buildUnexpectedCharactersMessage(text: string, offset: number, length: number): string {
    const start = text[offset];
    if (start === '"') return 'This text is not closed: put a " at its end, on the same line.';
    if (start === "“" || start === "”" || start === "„")
      return 'Texts stand in straight quotation marks: "…".';
    if (start === "'") return 'Texts stand in double quotation marks: "…".';
    const shown = text.slice(offset, offset + Math.min(length, 20));
    return `\`${shown}\` means nothing here. Take it out, or put it in quotation marks if it belongs to a text.`;
  }
}

function found(token: Token | undefined): string {
  if (token === undefined || token.image === "") return "the end of the file";
  return `\`${token.image.length > 40 ? `${token.image.slice(0, 40)}…` : token.image}\``;
}

function unexpected(actual: Token | undefined, paths: readonly (readonly TokenType[])[]): string {
  const first = [...new Set(paths.flatMap((path) => (path[0] === undefined ? [] : [describe(path[0])])))];
  const shown = first.slice(0, MOST_EXPECTATIONS).join(", ");
  const more = first.length > MOST_EXPECTATIONS ? ", …" : "";
  return `Found ${found(actual)} where one of these was expected: ${shown}${more}.`;
}

/** Names of the terminals for people; everything else is a word of the grammar and stands for itself. */
const TERMINALS: Readonly<Record<string, string>> = {
  WORD: "a name",
  STRING: 'a text in "…"',
  NUMBER: "a number",
  DATE: "a date such as 2026-10-12",
  EOF: "the end of the file",
};

function describe(type: TokenType): string {
  return TERMINALS[type.name] ?? `\`${type.name.replace(/:KW$/, "")}\``;
}
