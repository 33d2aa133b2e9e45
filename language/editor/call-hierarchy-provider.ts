/** What is made of what: a curriculum of plans, a plan of drills and findings, a finding of the drills it would try. */
import {
  type AstNode,
  type AstNodeLocator,
  AstUtils,
  type LangiumDocuments,
  type Reference,
  type ReferenceDescription,
  type Stream,
} from "langium";
import { AbstractCallHierarchyProvider, type NodeKindProvider } from "langium/lsp";
import type {
  CallHierarchyIncomingCall,
  CallHierarchyItem,
  CallHierarchyOutgoingCall,
  Range,
} from "vscode-languageserver";
import {
  type Curriculum,
  type Drill,
  type Finding,
  isCurriculum,
  isDrill,
  isFinding,
  isPlan,
  type Plan,
} from "../generated/tree/ast.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";

type Part = Curriculum | Plan | Finding | Drill;

export class DrillwrightCallHierarchyProvider extends AbstractCallHierarchyProvider {
  private readonly kinds: NodeKindProvider;
  private readonly locator: AstNodeLocator;
  private readonly files: LangiumDocuments;

  constructor(services: DrillwrightEditorServices) {
    super(services);
    this.kinds = services.shared.lsp.NodeKindProvider;
    this.locator = services.workspace.AstNodeLocator;
    this.files = services.shared.workspace.LangiumDocuments;
  }

  protected override getCallHierarchyItems(node: AstNode): CallHierarchyItem[] | undefined {
    const item = this.item(node);
    return item === undefined ? undefined : [item];
  }

  protected override getIncomingCalls(
    node: AstNode,
    references: Stream<ReferenceDescription>,
  ): CallHierarchyIncomingCall[] | undefined {
    if (!isPart(node)) return undefined;
    const ranges = new Map<Part, Range[]>();
    for (const { sourceUri, sourcePath, segment } of references) {
      const root = this.files.getDocument(sourceUri)?.parseResult.value;
      const user = root && AstUtils.getContainerOfType(this.locator.getAstNode(root, sourcePath), isPart);
      if (user !== undefined) ranges.set(user, [...(ranges.get(user) ?? []), segment.range]);
    }
    return [...ranges].flatMap(([user, fromRanges]) => {
      const from = this.item(user);
      return from === undefined ? [] : [{ from, fromRanges }];
    });
  }

  protected override getOutgoingCalls(node: AstNode): CallHierarchyOutgoingCall[] | undefined {
    if (!isPart(node)) return undefined;
    const ranges = new Map<Part, Range[]>();
    for (const part of AstUtils.streamAst(node)) {
      for (const { reference } of AstUtils.streamReferences(part)) {
        const { ref, $refNode } = reference as Reference;
        if (!isPart(ref) || $refNode === undefined) continue;
        ranges.set(ref, [...(ranges.get(ref) ?? []), $refNode.range]);
      }
    }
    return [...ranges].flatMap(([used, fromRanges]) => {
      const to = this.item(used);
      return to === undefined ? [] : [{ to, fromRanges }];
    });
  }

  private item(node: AstNode): CallHierarchyItem | undefined {
    const nameNode = this.nameProvider.getNameNode(node);
    if (!isPart(node) || nameNode === undefined || node.$cstNode === undefined) return undefined;
    return {
      kind: this.kinds.getSymbolKind(node),
      name: node.name,
      detail: node.$type.toLowerCase(),
      range: node.$cstNode.range,
      selectionRange: nameNode.range,
      uri: AstUtils.getDocument(node).uri.toString(),
    };
  }
}

function isPart(node: unknown): node is Part {
  return isCurriculum(node) || isPlan(node) || isFinding(node) || isDrill(node);
}
