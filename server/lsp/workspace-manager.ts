import {
  DocumentState,
  type FileSystemNode,
  type LangiumDocument,
  type LangiumDocumentFactory,
  type LangiumSharedCoreServices,
  type Stream,
  type URI,
  UriUtils,
} from "langium";
import { Document } from "../../language/generated/tree/ast.ts";
import { DrillwrightWorkspaceManager } from "../../language/library/workspace-manager.ts";
import { FILE_ENDING } from "../../language/names/use-target.ts";

/** Folders that hold nobody's plans: those that the command line leaves out as well. */
const SKIPPED = new Set(["node_modules", "dist"]);

export class EditorWorkspaceManager extends DrillwrightWorkspaceManager {
  private readonly documentFactory: LangiumDocumentFactory;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.documentFactory = services.workspace.LangiumDocumentFactory;
    this.initialBuildOptions = services.workspace.DocumentBuilder.updateBuildOptions;
  }

  /** Looks for files where the command line does, so that both say the same of a folder. */
  override shouldIncludeEntry({ uri, isDirectory }: FileSystemNode): boolean {
    const name = UriUtils.basename(uri);
    if (name.startsWith(".")) return false;
    return isDirectory ? !SKIPPED.has(name) : name.endsWith(FILE_ENDING);
  }

  /** Notes which files there are. They are read when they are built: the open ones first. */
  protected override async loadWorkspaceDocuments(
    uris: Stream<URI>,
    collector: (document: LangiumDocument) => void,
  ): Promise<void> {
    for (const uri of uris) {
      const unread: Document = { $type: Document.$type, uses: [], declarations: [] };
      const document = this.documentFactory.fromModel(unread, uri);
      document.state = DocumentState.Changed;
      collector(document);
    }
  }
}
