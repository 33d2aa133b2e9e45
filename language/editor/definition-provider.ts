/** Leads from a name to its declaration, also into the library, and from a `use` path to its file. */
import { AstUtils, type CstNode, GrammarUtils, type LangiumDocument } from "langium";
import { DefaultDefinitionProvider } from "langium/lsp";
import type { DefinitionParams, LocationLink } from "vscode-languageserver";
import { type Document, isUse } from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";

const TOP = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

export class DrillwrightDefinitionProvider extends DefaultDefinitionProvider {
  private readonly names: Names;

  constructor(services: DrillwrightEditorServices) {
    super(services);
    this.names = services.names.Names;
  }

  protected override async collectLocationLinks(
    source: CstNode,
    params: DefinitionParams,
  ): Promise<LocationLink[] | undefined> {
    return this.usedFile(source) ?? super.collectLocationLinks(source, params);
  }

  private usedFile(source: CstNode): LocationLink[] | undefined {
    const use = source.astNode;
    if (!isUse(use) || GrammarUtils.findAssignment(source)?.feature !== "path") return undefined;
    const document = AstUtils.getDocument(use) as LangiumDocument<Document>;
    const used = this.names.usedFiles(document).find((file) => file.use === use)?.document;
    if (used === undefined) return [];
    return [
      {
        targetUri: used.textDocument.uri,
        targetRange: TOP,
        targetSelectionRange: TOP,
        originSelectionRange: source.range,
      },
    ];
  }
}
