/** Loads the built-in vocabulary before any file of the workspace. */
import {
  DefaultWorkspaceManager,
  type LangiumDocument,
  type LangiumDocumentFactory,
  type LangiumSharedCoreServices,
  type WorkspaceFolder,
} from "langium";
import { libraryFiles } from "./library.ts";

export class DrillwrightWorkspaceManager extends DefaultWorkspaceManager {
  private readonly factory: LangiumDocumentFactory;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.factory = services.workspace.LangiumDocumentFactory;
  }

  protected override async loadAdditionalDocuments(
    _folders: WorkspaceFolder[],
    collector: (document: LangiumDocument) => void,
  ): Promise<void> {
    for (const { uri, text } of libraryFiles()) collector(this.factory.fromString(text, uri));
  }
}
