/** Which names a file offers to others. There are no local scopes: a name is declared for a whole file. */
import {
  type AstNodeDescription,
  type AstNodeDescriptionProvider,
  type LangiumDocument,
  type LocalSymbols,
  MultiMap,
  type ScopeComputation,
} from "langium";
import type { DrillwrightServices } from "../core-module.ts";
import type { Document } from "../generated/tree/ast.ts";
import { describe } from "./description.ts";
import { nameTableOf } from "./name-table.ts";

export class DrillwrightScopeComputation implements ScopeComputation {
  private readonly descriptions: AstNodeDescriptionProvider;

  constructor(services: DrillwrightServices) {
    this.descriptions = services.workspace.AstNodeDescriptionProvider;
  }

  async collectExportedSymbols(document: LangiumDocument): Promise<AstNodeDescription[]> {
    const names = nameTableOf(document.parseResult.value as Document).all();
    return [...names].map((node) => describe(node, this.descriptions));
  }

  async collectLocalSymbols(): Promise<LocalSymbols> {
    return { has: () => false, getStream: () => new MultiMap<string, AstNodeDescription>().values() };
  }
}
