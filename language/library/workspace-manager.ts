/** Loads the built-in vocabulary before any file of the workspace. */
import {
  DefaultWorkspaceManager,
  type LangiumDocument,
  type LangiumDocumentFactory,
  type LangiumSharedCoreServices,
  type ServiceRegistry,
  TextDocument,
  type WorkspaceFolder,
} from "langium";
import type { NotingLinker } from "../names/linker.ts";
import { type LibraryFile, libraryFiles } from "./library.ts";
import { reviveTree } from "./stored-tree.ts";

export class DrillwrightWorkspaceManager extends DefaultWorkspaceManager {
  private readonly factory: LangiumDocumentFactory;
  private readonly registry: ServiceRegistry;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.factory = services.workspace.LangiumDocumentFactory;
    this.registry = services.ServiceRegistry;
  }

  protected override async loadAdditionalDocuments(
    _folders: WorkspaceFolder[],
    collector: (document: LangiumDocument) => void,
  ): Promise<void> {
    for (const file of libraryFiles()) collector(this.load(file));
  }

  private load({ uri, text, tree }: LibraryFile): LangiumDocument {
    const { references, parser, LanguageMetaData } = this.registry.getServices(uri);
    const parse = () => parser.LangiumParser.parse(text).value;
    const document = this.factory.fromModel(reviveTree(tree, references.Linker as NotingLinker, parse), uri);
    const textDocument = TextDocument.create(uri.toString(), LanguageMetaData.languageId, 0, text);
    return Object.defineProperty(document, "textDocument", { value: textDocument });
  }
}
