/** Resolves every reference of the language. */
import {
  type AstNode,
  type AstNodeDescription,
  type AstNodeDescriptionProvider,
  type AstReflection,
  AstUtils,
  type LangiumDocument,
  type ReferenceInfo,
  type Scope,
  type ScopeProvider,
  stream,
} from "langium";
import type { DrillwrightServices } from "../core-module.ts";
import { Block, Direction, type Document, isBlock, isSession, isSessionPlan } from "../generated/tree/ast.ts";
import { directionsOf, metricAt } from "../types/directions.ts";
import { describe } from "./description.ts";
import type { NamedType } from "./name-table.ts";
import type { Names } from "./names.ts";

type Named = AstNode & { readonly name: string };

export class DrillwrightScopeProvider implements ScopeProvider {
  private readonly names: Names;
  private readonly reflection: AstReflection;
  private readonly descriptions: AstNodeDescriptionProvider;

  constructor(services: DrillwrightServices) {
    this.names = services.names.Names;
    this.reflection = services.shared.AstReflection;
    this.descriptions = services.workspace.AstNodeDescriptionProvider;
  }

  getScope(context: ReferenceInfo): Scope {
    const type = this.reflection.getReferenceType(context);
    switch (type) {
      // Direction words belong to the metric they are said of, blocks to the plan of the session.
      case Direction.$type: {
        const metric = metricAt(context.container);
        return this.scopeOf(metric === undefined ? [] : directionsOf(metric));
      }
      case Block.$type:
        return this.scopeOf(blocksOfSessionPlan(context.container));
      default: {
        const document = AstUtils.getDocument<Document>(context.container);
        return this.fileScope(document, type as NamedType);
      }
    }
  }

  private fileScope(document: LangiumDocument<Document>, type: NamedType): Scope {
    return {
      getElement: (name) => {
        const first = this.names.find(document, type, name)[0];
        return first === undefined ? undefined : this.describe(first);
      },
      getElements: (name) => stream(this.names.find(document, type, name).map((node) => this.describe(node))),
      getAllElements: () =>
        stream([...this.names.visible(document, type)].map((node) => this.describe(node))),
    };
  }

  private scopeOf(nodes: readonly Named[]): Scope {
    const matching = (name: string) => nodes.filter((node) => node.name === name);
    return {
      getElement: (name) => {
        const first = matching(name)[0];
        return first === undefined ? undefined : this.describe(first);
      },
      getElements: (name) => stream(matching(name).map((node) => this.describe(node))),
      getAllElements: () => stream(nodes.map((node) => this.describe(node))),
    };
  }

  private describe(node: Named): AstNodeDescription {
    return describe(node, this.descriptions);
  }
}

/** The blocks of the plan that the session around `node` was practised against. */
function blocksOfSessionPlan(node: AstNode): Block[] {
  const session = AstUtils.getContainerOfType(node, isSession);
  const plan = session?.statements.find(isSessionPlan)?.plan?.ref;
  return plan?.statements.filter(isBlock) ?? [];
}
