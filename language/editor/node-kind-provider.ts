/** The icons of declarations in outlines, symbol searches and completion lists. */
import { type AstNode, type AstNodeDescription, isAstNodeDescription } from "langium";
import type { NodeKindProvider } from "langium/lsp";
import { CompletionItemKind, SymbolKind } from "vscode-languageserver";

interface Kinds {
  readonly symbol: SymbolKind;
  readonly completion: CompletionItemKind;
}

const KINDS: Readonly<Record<string, Kinds>> = {
  Dimension: { symbol: SymbolKind.Struct, completion: CompletionItemKind.Struct },
  UnitName: { symbol: SymbolKind.EnumMember, completion: CompletionItemKind.Unit },
  Metric: { symbol: SymbolKind.Variable, completion: CompletionItemKind.Variable },
  FrameDirection: { symbol: SymbolKind.EnumMember, completion: CompletionItemKind.EnumMember },
  HandedDirection: { symbol: SymbolKind.EnumMember, completion: CompletionItemKind.EnumMember },
  Club: { symbol: SymbolKind.Constant, completion: CompletionItemKind.Constant },
  Plan: { symbol: SymbolKind.Class, completion: CompletionItemKind.Class },
  Block: { symbol: SymbolKind.Method, completion: CompletionItemKind.Method },
  Drill: { symbol: SymbolKind.Function, completion: CompletionItemKind.Function },
  Parameter: { symbol: SymbolKind.TypeParameter, completion: CompletionItemKind.Variable },
  Category: { symbol: SymbolKind.EnumMember, completion: CompletionItemKind.EnumMember },
  Window: { symbol: SymbolKind.Constant, completion: CompletionItemKind.Constant },
  Finding: { symbol: SymbolKind.Interface, completion: CompletionItemKind.Interface },
  Curriculum: { symbol: SymbolKind.Namespace, completion: CompletionItemKind.Module },
  Instrument: { symbol: SymbolKind.Struct, completion: CompletionItemKind.Struct },
  Player: { symbol: SymbolKind.Object, completion: CompletionItemKind.Value },
  Source: { symbol: SymbolKind.Interface, completion: CompletionItemKind.Interface },
  Column: { symbol: SymbolKind.Field, completion: CompletionItemKind.Field },
  Session: { symbol: SymbolKind.Event, completion: CompletionItemKind.Event },
};

const OTHER: Kinds = { symbol: SymbolKind.Boolean, completion: CompletionItemKind.Reference };

export class DrillwrightNodeKindProvider implements NodeKindProvider {
  getSymbolKind(node: AstNode | AstNodeDescription): SymbolKind {
    return kindsOf(node).symbol;
  }

  getCompletionItemKind(node: AstNode | AstNodeDescription): CompletionItemKind {
    return kindsOf(node).completion;
  }
}

function kindsOf(node: AstNode | AstNodeDescription): Kinds {
  return KINDS[isAstNodeDescription(node) ? node.type : node.$type] ?? OTHER;
}
