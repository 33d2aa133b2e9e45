/** What the grammar says about its own words. */
import { type AstNode, GrammarAST, isAstNodeWithComment, isJSDoc, parseJSDoc } from "langium";

/**
 * The documentation of a word of the grammar: a comment on the word itself, on the choice it is part of, or on the
 * statement that it belongs to.
 */
export function keywordDocumentation(keyword: GrammarAST.Keyword): string | undefined {
  for (let at: AstNode | undefined = keyword; at !== undefined; at = at.$container) {
    const comment = commentOf(at);
    if (comment !== undefined && isJSDoc(comment)) return parseJSDoc(comment).toMarkdown();
    if (GrammarAST.isGroup(at) || GrammarAST.isParserRule(at)) return undefined;
  }
  return undefined;
}

/** A comment in front of a choice is also kept as one on the choice, though it may be about its first word only. */
function commentOf(node: AstNode): string | undefined {
  const comment = isAstNodeWithComment(node) ? node.$comment : undefined;
  const first = GrammarAST.isAlternatives(node) ? node.elements[0] : undefined;
  return first !== undefined && commentOf(first) === comment ? undefined : comment;
}
