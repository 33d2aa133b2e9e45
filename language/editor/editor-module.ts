/** The services of an editor: those of the language, and one file here for each feature of the protocol. */
import { DefaultReferences, inject, type Module } from "langium";
import {
  createDefaultModule,
  createDefaultSharedModule,
  type DefaultSharedModuleContext,
  type LangiumServices,
  type LangiumSharedServices,
  type PartialLangiumServices,
  type PartialLangiumSharedServices,
} from "langium/lsp";
import {
  type DrillwrightAddedServices,
  drillwrightModule,
  drillwrightSharedModule,
  GRAMMAR_CONFIG,
} from "../core-module.ts";
import { DrillwrightGeneratedModule, DrillwrightGeneratedSharedModule } from "../generated/tree/module.ts";
import { createLexer } from "../syntax/lexer.ts";
import { DrillwrightCallHierarchyProvider } from "./call-hierarchy-provider.ts";
import { DrillwrightCodeActionProvider } from "./code-action-provider.ts";
import { createCompletionParser } from "./completion/completion-parser.ts";
import { DrillwrightCompletionProvider } from "./completion-provider.ts";
import { DrillwrightDefinitionProvider } from "./definition-provider.ts";
import { DrillwrightDocumentLinkProvider } from "./document-link-provider.ts";
import { DrillwrightDocumentSymbolProvider } from "./document-symbol-provider.ts";
import { DrillwrightFileOperationHandler } from "./file-operation-handler.ts";
import { DrillwrightFoldingRangeProvider } from "./folding-range-provider.ts";
import { DrillwrightFormatter } from "./formatter.ts";
import { DrillwrightFuzzyMatcher } from "./fuzzy-matcher.ts";
import { DrillwrightHoverProvider } from "./hover-provider.ts";
import { DrillwrightLanguageServer } from "./language-server.ts";
import { late } from "./late-service.ts";
import { DrillwrightNodeKindProvider } from "./node-kind-provider.ts";
import { DrillwrightRenameProvider } from "./rename-provider.ts";
import { DrillwrightSemanticTokenProvider } from "./semantic-token-provider.ts";
import { DrillwrightSignatureHelpProvider } from "./signature-help-provider.ts";
import { LibraryContentProvider } from "./text-document-content-provider.ts";
import { WORD_CHARACTER } from "./words.ts";
import { DrillwrightWorkspaceSymbolProvider } from "./workspace-symbol-provider.ts";

export type DrillwrightEditorServices = LangiumServices & DrillwrightAddedServices;

const editorModule: Module<DrillwrightEditorServices, PartialLangiumServices> = {
  parser: {
    CompletionParser: late((services) => createCompletionParser(services)),
    GrammarConfig: () => ({ ...GRAMMAR_CONFIG, nameRegexp: WORD_CHARACTER }),
    Lexer: late((services) => createLexer(services)),
  },
  references: { References: late((services) => new DefaultReferences(services)) },
  lsp: {
    CallHierarchyProvider: (services) => new DrillwrightCallHierarchyProvider(services),
    CodeActionProvider: (services) => new DrillwrightCodeActionProvider(services),
    CompletionProvider: (services) => new DrillwrightCompletionProvider(services),
    DefinitionProvider: (services) => new DrillwrightDefinitionProvider(services),
    DocumentLinkProvider: (services) => new DrillwrightDocumentLinkProvider(services),
    DocumentSymbolProvider: (services) => new DrillwrightDocumentSymbolProvider(services),
    Formatter: (services) => new DrillwrightFormatter(services),
    FoldingRangeProvider: () => new DrillwrightFoldingRangeProvider(),
    HoverProvider: (services) => new DrillwrightHoverProvider(services),
    RenameProvider: (services) => new DrillwrightRenameProvider(services),
    SemanticTokenProvider: () => new DrillwrightSemanticTokenProvider(),
    SignatureHelp: (services) => new DrillwrightSignatureHelpProvider(services),
  },
};

const sharedEditorModule: Module<LangiumSharedServices, PartialLangiumSharedServices> = {
  lsp: {
    FileOperationHandler: (services) => new DrillwrightFileOperationHandler(services),
    FuzzyMatcher: () => new DrillwrightFuzzyMatcher(),
    LanguageServer: (services) => new DrillwrightLanguageServer(services),
    NodeKindProvider: () => new DrillwrightNodeKindProvider(),
    TextDocumentContentProvider: () => new LibraryContentProvider(),
    WorkspaceSymbolProvider: (services) => new DrillwrightWorkspaceSymbolProvider(services),
  },
};

/** Services that a host puts in place of these, or adds. */
export interface HostModules {
  readonly module?: Module<DrillwrightEditorServices, PartialLangiumServices>;
  readonly sharedModule?: Module<LangiumSharedServices, PartialLangiumSharedServices>;
}

/** Services for hosts with an editor. They need a connection only once a server is started with them. */
export function createEditorServices(
  context: DefaultSharedModuleContext,
  host: HostModules = {},
): { shared: LangiumSharedServices; drillwright: DrillwrightEditorServices } {
  const shared = inject(
    createDefaultSharedModule(context),
    DrillwrightGeneratedSharedModule,
    drillwrightSharedModule,
    sharedEditorModule,
    host.sharedModule,
  );
  const drillwright = inject(
    createDefaultModule({ shared }),
    DrillwrightGeneratedModule,
    drillwrightModule,
    editorModule,
    host.module,
  );
  shared.ServiceRegistry.register(drillwright);
  return { shared, drillwright };
}
