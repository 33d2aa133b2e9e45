/**
 * Tokens for what is no part of the language but is often typed. With them every character of a text belongs to a
 * token: there is one kind of syntax error, a slip has its own words, and a text that is not closed is read once.
 */
import { DefaultTokenBuilder, type Grammar, GrammarAST, stream } from "langium";
import type { TokenType } from "./tokens.ts";
import { walk } from "./walk.ts";

/** The names of the tokens; their patterns are tried in this order, after all of the grammar's. */
export const SLIP = {
  /** A text up to the end of its line. */
  unclosedText: "unclosed text",
  /** A text in typographic quotation marks. */
  curlyText: "text in curly quotation marks",
  /** A text in single quotation marks. */
  singleQuotedText: "text in single quotation marks",
  /** A comment up to the end of the file. */
  unclosedComment: "unclosed comment",
  /** A sign that compares, such as `<=`. */
  comparison: "comparison",
  /** A dash or minus sign that is not on the keyboard. */
  dash: "dash",
  /** Any other character that means nothing. */
  unknown: "unknown character",
} as const;

const SLIP_TOKENS: readonly TokenType[] = [
  { name: SLIP.unclosedText, PATTERN: /"[^\r\n]*/ },
  {
    name: SLIP.curlyText,
    PATTERN:
      /[\u201C-\u201F\u00AB\u00BB][^\u201C-\u201F\u00AB\u00BB"\r\n{}]*[\u201C-\u201F\u00AB\u00BB"]?|[\u2018\u201A\u201B][^"\r\n{}]*[\u2018\u2019]/,
  },
  { name: SLIP.singleQuotedText, PATTERN: /'[^'\r\n]*'/ },
  { name: SLIP.unclosedComment, PATTERN: /\/\*[\s\S]*/, LINE_BREAKS: true },
  { name: SLIP.comparison, PATTERN: /[<>]=?|[\u2264\u2265]/ },
  { name: SLIP.dash, PATTERN: /[\u2010-\u2015\u2212]/ },
  // Stated as ranges: the lexer sorts its patterns by first character, which it cannot do for "anything but …".
  {
    name: SLIP.unknown,
    // biome-ignore lint/suspicious/noControlCharactersInRegex: every character has a token
    PATTERN: /[\u0000-\u0008\u000E-\u001F!#$&'.:;?@[\\\]^_`|~\u007F-\uFFFF]/,
  },
];

/** The terminal that a keyword of letters may be the beginning of: `shots` of `shots-taken`. */
const WORD = "WORD";

/** The grammar's tokens, and those above. */
export class DrillwrightTokenBuilder extends DefaultTokenBuilder {
  /** The default first seeks the rules that are in use, which all are, and streams through them for their keywords. */
  override buildTokens(grammar: Grammar): TokenType[] {
    const terminals = this.buildTerminalTokens(stream(grammar.rules));
    const keywords = new Map<string, GrammarAST.Keyword>();
    walk(grammar, (node) => {
      if (GrammarAST.isKeyword(node) && !keywords.has(node.value)) keywords.set(node.value, node);
    });
    return [...keywords.values()]
      .sort((one, other) => other.value.length - one.value.length)
      .map((keyword) => this.buildKeywordToken(keyword, terminals, false))
      .concat(terminals);
  }

  protected override buildTerminalTokens(
    ...args: Parameters<DefaultTokenBuilder["buildTerminalTokens"]>
  ): TokenType[] {
    return [...super.buildTerminalTokens(...args), ...SLIP_TOKENS.map((token) => ({ ...token }))];
  }

  /** The default tries every keyword on every terminal, which is most of what building the tokens costs. */
  protected override findLongerAlt(
    ...[keyword, terminals]: Parameters<DefaultTokenBuilder["findLongerAlt"]>
  ): TokenType[] {
    const isWord = /^\p{L}/u.test(keyword.value);
    return isWord ? terminals.filter(({ name }) => name === WORD) : super.findLongerAlt(keyword, terminals);
  }
}
