/** What the grammar lets follow a piece of text. */
import { type Grammar, GrammarAST, GrammarUtils, type LangiumCompletionParser } from "langium";
import { findFirstFeatures, findNextFeatures, type NextFeature } from "langium/lsp";
import type { DrillwrightEditorServices } from "../editor-module.ts";

/** A keyword, a reference or a terminal of the grammar. */
export type Expectation = NextFeature["feature"];

export class Expectations {
  private readonly grammar: Grammar;
  private readonly parser: LangiumCompletionParser;

  constructor(services: DrillwrightEditorServices) {
    this.grammar = services.Grammar;
    this.parser = services.parser.CompletionParser;
  }

  /** Each once; none where the text cannot be read. Cost: that of parsing the text. */
  after(text: string): readonly Expectation[] {
    const { tokens, tokenIndex, elementStack } = this.parser.parse(text);
    if (tokens.length === 0) return this.atStart();
    if (tokenIndex === 0) return [];
    const stack = elementStack.map((feature) => ({ feature }));
    return distinct(findNextFeatures([stack], tokens.slice(tokenIndex)));
  }

  /** The words that a declaration, or anything else at the top of a file, begins with. */
  declarations(): ReadonlySet<string> {
    return new Set(this.atStart().flatMap((first) => (GrammarAST.isKeyword(first) ? [first.value] : [])));
  }

  private atStart(): readonly Expectation[] {
    const entry = GrammarUtils.getEntryRule(this.grammar);
    if (entry === undefined) return [];
    return distinct(findFirstFeatures(entry.definition).flatMap((stack) => stack.at(-1) ?? []));
  }
}

function distinct(features: readonly NextFeature[]): Expectation[] {
  return [...new Set(features.map(({ feature }) => feature))];
}
