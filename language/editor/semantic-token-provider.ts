/** Colours that only the meaning of a word can give: which words are known metrics, units, sides, clubs and names. */

import {
  type AstNode,
  AstUtils,
  Cancellation,
  type CstNode,
  interruptAndCheck,
  type LangiumDocument,
} from "langium";
import type { SemanticTokenProvider } from "langium/lsp";
import {
  type Range,
  SemanticTokenModifiers,
  type SemanticTokens,
  SemanticTokensBuilder,
  type SemanticTokensOptions,
  type SemanticTokensParams,
  type SemanticTokensRangeParams,
  SemanticTokenTypes,
} from "vscode-languageserver";
import { comparePositions } from "../../shared/position.ts";
import { cstOf } from "../checks/edits.ts";
import { isLibraryUri } from "../library/library.ts";

/** The colour of what is meant, by the type of its declaration. */
const TYPES: Readonly<Record<string, SemanticTokenTypes>> = {
  Metric: SemanticTokenTypes.variable,
  Dimension: SemanticTokenTypes.type,
  UnitName: SemanticTokenTypes.type,
  FrameDirection: SemanticTokenTypes.enumMember,
  HandedDirection: SemanticTokenTypes.enumMember,
  Club: SemanticTokenTypes.class,
  Plan: SemanticTokenTypes.function,
  Block: SemanticTokenTypes.function,
  Player: SemanticTokenTypes.function,
  Source: SemanticTokenTypes.function,
  Session: SemanticTokenTypes.function,
};

const LEGEND = [...new Set(Object.values(TYPES))];

const MODIFIERS = {
  [SemanticTokenModifiers.declaration]: 1,
  [SemanticTokenModifiers.defaultLibrary]: 2,
};

/** Nodes looked at between two chances to be interrupted. */
const NODES_A_SLICE = 500;

interface Token {
  readonly range: Range;
  readonly type: number;
  readonly modifiers: number;
}

/** It keeps nothing between requests, so that two of them cannot mix: a file is coloured in a few milliseconds. */
export class DrillwrightSemanticTokenProvider implements SemanticTokenProvider {
  readonly tokenTypes: Record<string, number> = Object.fromEntries(
    LEGEND.map((type, index) => [type, index]),
  );
  readonly tokenModifiers: Record<string, number> = MODIFIERS;
  readonly semanticTokensOptions: SemanticTokensOptions = {
    legend: { tokenTypes: [...LEGEND], tokenModifiers: Object.keys(MODIFIERS) },
    full: { delta: false },
    range: true,
  };

  semanticHighlight(
    document: LangiumDocument,
    _params: SemanticTokensParams,
    cancelToken = Cancellation.CancellationToken.None,
  ): Promise<SemanticTokens> {
    return tokensOf(document, undefined, cancelToken);
  }

  semanticHighlightRange(
    document: LangiumDocument,
    { range }: SemanticTokensRangeParams,
    cancelToken = Cancellation.CancellationToken.None,
  ): Promise<SemanticTokens> {
    return tokensOf(document, range, cancelToken);
  }

  semanticHighlightDelta(document: LangiumDocument, params: SemanticTokensParams): Promise<SemanticTokens> {
    return this.semanticHighlight(document, params);
  }
}

async function tokensOf(
  document: LangiumDocument,
  range: Range | undefined,
  cancelToken: Cancellation.CancellationToken,
): Promise<SemanticTokens> {
  const tokens: Token[] = [];
  let visited = 0;
  for (const node of AstUtils.streamAst(document.parseResult.value, range && { range })) {
    if (++visited % NODES_A_SLICE === 0) await interruptAndCheck(cancelToken);
    tokens.push(...tokensAt(node));
  }
  const builder = new SemanticTokensBuilder();
  for (const token of tokens.sort(byPlace)) {
    const { start, end } = token.range;
    builder.push(start.line, start.character, end.character - start.character, token.type, token.modifiers);
  }
  return builder.build();
}

/** The name a node declares and the names it refers to; a name that means nothing stays as it is. */
function* tokensAt(node: AstNode): Iterable<Token> {
  if ("name" in node) yield* token(cstOf(node, "name"), node, MODIFIERS.declaration);
  for (const { reference } of AstUtils.streamReferences(node)) {
    const target = "ref" in reference ? reference.ref : undefined;
    if (target !== undefined && "$refNode" in reference) yield* token(reference.$refNode, target, 0);
  }
}

function* token(cst: CstNode | undefined, declaration: AstNode, modifiers: number): Iterable<Token> {
  const type = TYPES[declaration.$type];
  if (cst === undefined || type === undefined || cst.range.start.line !== cst.range.end.line) return;
  const isBuiltIn = isLibraryUri(AstUtils.getDocument(declaration).uri);
  yield {
    range: cst.range,
    type: LEGEND.indexOf(type),
    modifiers: modifiers | (isBuiltIn ? MODIFIERS.defaultLibrary : 0),
  };
}

function byPlace(a: Token, b: Token): number {
  return comparePositions(a.range.start, b.range.start);
}
