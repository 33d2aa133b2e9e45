/** The same grammar over the framework's own services: what one gets without any work on speed. Names are global. */
import {
  type AstNode,
  AstUtils,
  DefaultScopeComputation,
  DefaultWorkspaceManager,
  inject,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  URI,
} from "langium";
import { createDefaultModule, createDefaultSharedModule, startLanguageServer } from "langium/lsp";
import { NodeFileSystem } from "langium/node";
import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { LIBRARY_FILES } from "../../language/generated/library.ts";
import {
  DrillwrightGeneratedModule,
  DrillwrightGeneratedSharedModule,
} from "../../language/generated/tree/module.ts";

class GlobalNames extends DefaultScopeComputation {
  override collectExportedSymbolsForNode(parent: AstNode, document: LangiumDocument) {
    return super.collectExportedSymbolsForNode(parent, document, AstUtils.streamAllContents);
  }
}

class WithLibrary extends DefaultWorkspaceManager {
  private readonly shared: LangiumSharedCoreServices;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.shared = services;
  }

  protected override async loadAdditionalDocuments(
    _: unknown,
    collector: (document: LangiumDocument) => void,
  ) {
    for (const [name, text] of Object.entries(LIBRARY_FILES)) {
      const uri = URI.from({ scheme: "bench-library", path: `/${name}` });
      collector(this.shared.workspace.LangiumDocumentFactory.fromString(text, uri));
    }
  }
}

const connection = createConnection(ProposedFeatures.all);
const shared = inject(
  createDefaultSharedModule({ connection, ...NodeFileSystem }),
  DrillwrightGeneratedSharedModule,
  {
    workspace: { WorkspaceManager: (services: LangiumSharedCoreServices) => new WithLibrary(services) },
  },
);
const services = inject(createDefaultModule({ shared }), DrillwrightGeneratedModule, {
  references: {
    ScopeComputation: (core: ConstructorParameters<typeof GlobalNames>[0]) => new GlobalNames(core),
  },
});
shared.ServiceRegistry.register(services);
startLanguageServer(shared);
