/** Listens only to changes that can matter. */
import { type LangiumDocument, URI } from "langium";
import {
  DefaultDocumentUpdateHandler,
  type DocumentUpdateHandler,
  type LangiumSharedServices,
} from "langium/lsp";
import { type DidChangeWatchedFilesParams, FileChangeType } from "vscode-languageserver";
import type { Document } from "../../language/generated/tree/ast.ts";
import { isLibraryUri } from "../../language/library/library.ts";
import { Names } from "../../language/names/names.ts";
import { FILE_ENDING } from "../../language/names/use-target.ts";
import type { EditorWorkspaceManager } from "./workspace-manager.ts";

export class DrillwrightDocumentUpdateHandler
  extends DefaultDocumentUpdateHandler
  implements DocumentUpdateHandler
{
  private readonly services: LangiumSharedServices;
  private readonly names: Names;

  constructor(services: LangiumSharedServices) {
    super(services);
    this.services = services;
    this.names = new Names(services);
  }

  /** A closed file counts as it is on disk again: what was not saved is forgotten, and so is a file that never was. */
  async didCloseDocument({ document }: { document: { uri: string } }): Promise<void> {
    const uri = URI.parse(document.uri);
    if (isLibraryUri(uri)) return; // it lies nowhere, and nobody can have changed it
    const isThere = uri.scheme !== "untitled" && (await this.isThere(uri));
    if (this.services.workspace.TextDocuments.get(uri) !== undefined) return; // opened again meanwhile
    this.fireDocumentUpdate(isThere ? [uri] : [], isThere ? [] : [uri]);
  }

  /** What nobody can look for, as where the editor knows no files of a scheme, is not there. */
  private isThere(uri: URI): Promise<boolean> {
    return this.services.workspace.FileSystemProvider.exists(uri).catch(() => false);
  }

  /**
   * Every file is watched, since a folder that is moved or deleted is announced by its own name only. Files that are
   * no plans are told to the listeners, but make the language look at nothing. A text that is open goes on being what its
   * editor shows, whatever becomes of its file.
   */
  override didChangeWatchedFiles(params: DidChangeWatchedFilesParams): void {
    this.onWatchedFilesChangeEmitter.fire(params);
    const relevant = params.changes.filter(({ uri, type }) =>
      type === FileChangeType.Deleted ? this.isKnown(uri) : isMaybePlans(uri) && this.isLookedAt(uri),
    );
    if (relevant.length > 0) {
      const of = (deleted: boolean) =>
        relevant.filter(({ type }) => (type === FileChangeType.Deleted) === deleted).map(({ uri }) => uri);
      this.changed(of(false), of(true));
    }
  }

  /** Folders have come to the workspace, and others have left it. What is open stays known wherever it lies. */
  foldersChanged(added: readonly string[], removed: readonly string[]): void {
    this.changed(added, removed);
  }

  /** @param removed files and folders. Texts of them that are open are looked at again instead. */
  private changed(added: readonly string[], removed: readonly string[]): void {
    const isGone = (uri: string) => removed.some((gone) => uri === gone || uri.startsWith(`${gone}/`));
    const open = removed.length === 0 ? [] : this.services.workspace.TextDocuments.keys().filter(isGone);
    this.fireDocumentUpdate(
      [...added, ...open].map((uri) => URI.parse(uri)),
      removed.filter((uri) => !open.includes(uri)).map((uri) => URI.parse(uri)),
    );
  }

  /** Files of folders that are left out are read where another uses them. */
  private isLookedAt(uri: string): boolean {
    const { LangiumDocuments, WorkspaceManager } = this.services.workspace;
    if (!(WorkspaceManager as EditorWorkspaceManager).isLeftOut(uri)) return true;
    const uses = (document: LangiumDocument) => this.names.usedUris(document as LangiumDocument<Document>);
    return LangiumDocuments.all.some((document) => uses(document).some((used) => used.toString() === uri));
  }

  private isKnown(uri: string): boolean {
    return this.services.workspace.LangiumDocuments.all.some((document) => {
      const known = document.uri.toString();
      return known === uri || known.startsWith(`${uri}/`);
    });
  }
}

/** Whether it is a plan, or may be a folder with plans. */
function isMaybePlans(uri: string): boolean {
  return uri.endsWith(FILE_ENDING) || !(uri.split("/").at(-1) ?? "").includes(".");
}
