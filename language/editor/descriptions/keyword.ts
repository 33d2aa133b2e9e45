/** What the grammar says about its own words. */
import { type AstNode, GrammarAST, isAstNodeWithComment, isJSDoc, parseJSDoc } from "langium";

/**
 * The documentation of a word of the grammar: a comment on the word itself, on the choice it is part of, or on the
 * statement that it belongs to.
 */
export function keywordDocumentation(keyword: GrammarAST.Keyword): string | undefined {
  for (let at: AstNode | undefined = keyword; at !== undefined; at = at.$container) {
    const comment = isAstNodeWithComment(at) ? at.$comment : undefined;
    if (comment && isJSDoc(comment)) return parseJSDoc(comment).toMarkdown();
    if (GrammarAST.isGroup(at) || GrammarAST.isParserRule(at)) return undefined;
  }
  return undefined;
}
