/** The outline of a file: plans with their blocks and goals, sessions, sources with their columns, and vocabulary. */
import type { AstNode, CstNode, LangiumDocument } from "langium";
import type { DocumentSymbolProvider, NodeKindProvider } from "langium/lsp";
import type { DocumentSymbol } from "vscode-languageserver";
import { cstOf } from "../checks/edits.ts";
import {
  type Block,
  type Declaration,
  type Document,
  isBlock,
  isColumn,
  isHandedness,
  isSessionPlan,
  isSuccess,
  type Unit,
} from "../generated/tree/ast.ts";
import { textOf } from "../lowering/place.ts";
import { shotsOf } from "../types/shots.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";

export class DrillwrightDocumentSymbolProvider implements DocumentSymbolProvider {
  private readonly kinds: NodeKindProvider;

  constructor(services: DrillwrightEditorServices) {
    this.kinds = services.shared.lsp.NodeKindProvider;
  }

  getSymbols(document: LangiumDocument): DocumentSymbol[] {
    const { declarations } = document.parseResult.value as Document;
    return declarations.flatMap((declaration) =>
      this.symbol(
        declaration,
        declaration.name,
        cstOf(declaration, "name"),
        detailOf(declaration),
        this.parts(declaration),
      ),
    );
  }

  private parts(declaration: Declaration): DocumentSymbol[] {
    switch (declaration.$type) {
      case "Plan":
        return declaration.statements.filter(isBlock).flatMap((block) => this.block(block));
      case "Source":
        return declaration.statements
          .filter(isColumn)
          .flatMap((column) => this.symbol(column, column.header, cstOf(column, "header")));
      case "Dimension":
        return declaration.units.flatMap((unit) => this.unit(unit));
      default:
        return [];
    }
  }

  private block(block: Block): DocumentSymbol[] {
    const criteria = block.statements.filter(isSuccess).flatMap((success) => success.criteria);
    const shots = shotsOf(block)?.asked ?? 0;
    const detail = [block.kind, shots > 0 ? `${shots} shots` : undefined].filter(Boolean).join(", ");
    return this.symbol(
      block,
      block.name,
      cstOf(block, "name"),
      detail,
      criteria.flatMap((criterion) => this.symbol(criterion, textOf(criterion), criterion.$cstNode)),
    );
  }

  private unit(unit: Unit): DocumentSymbol[] {
    const [first] = unit.names;
    return first === undefined ? [] : this.symbol(first, first.name, first.$cstNode);
  }

  /** One symbol, or none for a node that is still without a name. */
  private symbol(
    node: AstNode,
    name: string | undefined,
    nameCst: CstNode | undefined,
    detail = "",
    children: DocumentSymbol[] = [],
  ): DocumentSymbol[] {
    const cst = node.$cstNode;
    if (!name || nameCst === undefined || cst === undefined) return children;
    return [
      {
        name,
        kind: this.kinds.getSymbolKind(node),
        range: cst.range,
        selectionRange: nameCst.range,
        ...(detail === "" ? {} : { detail }),
        ...(children.length === 0 ? {} : { children }),
      },
    ];
  }
}

function detailOf(declaration: Declaration): string {
  switch (declaration.$type) {
    case "Metric":
      return declaration.dimension?.$refText ?? "";
    case "Player":
      return declaration.statements.find(isHandedness)?.hand ?? "";
    case "Session":
      return declaration.statements.find(isSessionPlan)?.plan?.ref?.name ?? "";
    default:
      return "";
  }
}
