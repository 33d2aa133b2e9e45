/** What the grammar lets follow a piece of text. */
import { type Grammar, GrammarAST, GrammarUtils, type LangiumCompletionParser, type Lexer } from "langium";
import { findFirstFeatures, findNextFeatures, type NextFeature } from "langium/lsp";
import { namesOf } from "../../syntax/statement-loops.ts";
import { nameOf } from "../../syntax/tokens.ts";
import type { DrillwrightEditorServices } from "../editor-module.ts";

/** A keyword, a reference or a terminal of the grammar. */
export type Expectation = NextFeature["feature"];

export class Expectations {
  /** Read when it is asked for: an editor may never ask. */
  private readonly grammar: () => Grammar;
  private readonly parser: LangiumCompletionParser;
  private readonly lexer: Lexer;

  constructor(services: DrillwrightEditorServices) {
    this.grammar = () => services.Grammar;
    this.parser = services.parser.CompletionParser;
    this.lexer = services.parser.Lexer;
  }

  /** Each once; none where the text cannot be read. Cost: that of parsing the text. */
  after(text: string): readonly Expectation[] {
    const { tokens, tokenIndex, elementStack } = this.parser.parse(text);
    if (tokens.length === 0) return this.atStart();
    if (tokenIndex === 0) return [];
    const stack = elementStack.map((feature) => ({ feature }));
    return distinct(findNextFeatures([stack], tokens.slice(tokenIndex)));
  }

  /** Whether the first word of a text is a name, and none that the grammar has another use for. */
  startsWithName(text: string): boolean {
    const [first] = this.lexer.tokenize(text, { mode: "partial" }).tokens;
    return first !== undefined && namesOf(this.grammar()).has(nameOf(first.tokenType));
  }

  /** The words that a declaration, or anything else at the top of a file, begins with. */
  declarations(): ReadonlySet<string> {
    return new Set(this.atStart().flatMap((first) => (GrammarAST.isKeyword(first) ? [first.value] : [])));
  }

  private atStart(): readonly Expectation[] {
    const entry = GrammarUtils.getEntryRule(this.grammar());
    if (entry === undefined) return [];
    return distinct(findFirstFeatures(entry.definition).flatMap((stack) => stack.at(-1) ?? []));
  }
}

function distinct(features: readonly NextFeature[]): Expectation[] {
  return [...new Set(features.map(({ feature }) => feature))];
}
