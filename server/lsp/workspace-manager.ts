import {
  type FileSystemNode,
  type LangiumDocument,
  type LangiumDocumentFactory,
  type LangiumSharedCoreServices,
  type Stream,
  type URI,
  UriUtils,
} from "langium";
import { DrillwrightWorkspaceManager } from "../../language/library/workspace-manager.ts";
import { FILE_ENDING } from "../../language/names/use-target.ts";
import { LEFT_OUT } from "../node/left-out.ts";
import { reasonOf } from "../node/system-errors.ts";
import { unreadDocument } from "./document-factory.ts";
import { isFile } from "./file-kinds.ts";
import type { UnreadFiles } from "./unread-files.ts";

export class EditorWorkspaceManager extends DrillwrightWorkspaceManager {
  private readonly documentFactory: LangiumDocumentFactory;
  private readonly unread: UnreadFiles;

  constructor(services: LangiumSharedCoreServices, unread: UnreadFiles) {
    super(services);
    this.unread = unread;
    this.documentFactory = services.workspace.LangiumDocumentFactory;
    this.initialBuildOptions = services.workspace.DocumentBuilder.updateBuildOptions;
  }

  /** Looks for files where the command line does, so that both say the same of a folder. */
  override shouldIncludeEntry({ uri, isDirectory }: FileSystemNode): boolean {
    const name = UriUtils.basename(uri);
    if (name.startsWith(".")) return false;
    return isDirectory ? !LEFT_OUT.has(name) : name.endsWith(FILE_ENDING);
  }

  /** Whether a file or folder lies where nobody looks for files. */
  isLeftOut(uri: string): boolean {
    const folder = this.workspaceFolders?.find((each) => uri.startsWith(`${each.uri}/`));
    const path = folder === undefined ? "" : uri.slice(folder.uri.length + 1);
    return path.split("/").some((name) => name.startsWith(".") || LEFT_OUT.has(name));
  }

  /** Links to files are followed, links to folders are not. */
  protected override async traverseFolder(folder: URI, uris: URI[]): Promise<void> {
    let entries: FileSystemNode[];
    try {
      entries = await this.fileSystemProvider.readDirectory(folder);
    } catch (error) {
      this.unread.set(folder.toString(), `This folder cannot be looked into: ${reasonOf(error)}.`);
      return;
    }
    await Promise.all(entries.map((entry) => this.enter(entry, uris)));
  }

  private async enter(entry: FileSystemNode, uris: URI[]): Promise<void> {
    const { uri } = entry;
    const isPlan = uri.path.endsWith(FILE_ENDING) && !entry.isDirectory;
    if (!this.shouldIncludeEntry(entry)) {
      if (isPlan) this.unread.set(uri.toString(), "Its name begins with a dot. Rename it to have it read.");
    } else if (entry.isDirectory) {
      await this.traverseFolder(uri, uris);
    } else if (entry.isFile || (await isFile(this.fileSystemProvider, uri))) {
      uris.push(uri);
    } else {
      this.unread.set(uri.toString(), "It is a link that leads to no file. Mend the link, or take it out.");
    }
  }

  /** Notes which files there are. They are read when they are built: the open ones first. */
  protected override async loadWorkspaceDocuments(
    uris: Stream<URI>,
    collector: (document: LangiumDocument) => void,
  ): Promise<void> {
    for (const uri of uris) collector(unreadDocument(this.documentFactory, uri));
  }
}
