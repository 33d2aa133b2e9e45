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
import {
  Block,
  Category,
  Club,
  Direction,
  type Document,
  isBlock,
  isGate,
  isPlan,
  isSession,
  isSessionPlan,
  type Metric,
  Parameter,
  type Plan,
} from "../generated/tree/ast.ts";
import { directionsOf, metricAt } from "../types/directions.ts";
import { parametersAt } from "../types/parameters.ts";
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
    const node = context.container;
    switch (type) {
      // Direction words and categories belong to the metric they are said of, blocks to a plan, parameters to a drill.
      case Direction.$type:
        return this.scopeOf(wordsOf(metricAt(node)));
      case Category.$type:
        return this.scopeOf(metricAt(node)?.categories ?? []);
      case "SideOrCategory": {
        const metric = metricAt(node);
        return this.scopeOf([...wordsOf(metric), ...(metric?.categories ?? [])]);
      }
      case Block.$type:
        return this.scopeOf(blocksAt(node));
      case Parameter.$type:
        return this.scopeOf(parametersAt(node));
      case "ClubOrParameter":
        return this.withLocal(
          parametersAt(node).filter(({ isClub }) => isClub),
          this.fileScope(AstUtils.getDocument<Document>(node), Club.$type),
        );
      default:
        return this.fileScope(AstUtils.getDocument<Document>(node), type as NamedType);
    }
  }

  /** Local names before those of the file. */
  private withLocal(nodes: readonly Named[], outer: Scope): Scope {
    const local = this.scopeOf(nodes);
    return {
      getElement: (name) => local.getElement(name) ?? outer.getElement(name),
      getElements: (name) => local.getElements(name).concat(outer.getElements(name)),
      getAllElements: () => local.getAllElements().concat(outer.getAllElements()),
    };
  }

  private fileScope(document: LangiumDocument<Document>, type: NamedType): Scope {
    return {
      getElement: (name) => {
        const first = this.names.first(document, type, name);
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

function wordsOf(metric: Metric | undefined): readonly Named[] {
  return metric === undefined ? [] : directionsOf(metric);
}

/** The blocks that can be named here: of the plan around, of the plan of the session around, or of the plan of a gate. */
function blocksAt(node: AstNode): readonly Block[] {
  return planAt(node)?.statements.filter(isBlock) ?? [];
}

/** The plan whose blocks can be named at a place. */
export function planAt(node: AstNode): Plan | undefined {
  if (isGate(node)) return node.plan?.ref;
  const session = AstUtils.getContainerOfType(node, isSession);
  if (session !== undefined) return session.statements.find(isSessionPlan)?.plan?.ref;
  return AstUtils.getContainerOfType(node, isPlan);
}
