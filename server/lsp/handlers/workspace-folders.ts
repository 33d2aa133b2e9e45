import type { LangiumSharedServices } from "langium/lsp";
import {
  type Connection,
  DidChangeWorkspaceFoldersNotification,
  type InitializeResult,
  type WorkspaceFolder,
} from "vscode-languageserver";
import type { DrillwrightDocumentUpdateHandler } from "../document-update-handler.ts";
import type { EditorSettings } from "../editor-settings.ts";

/** Reads folders that are added to the workspace, and forgets those that are taken out: the framework does neither. */
export function handleWorkspaceFolders(
  connection: Connection,
  { lsp }: LangiumSharedServices,
  settings: EditorSettings,
): void {
  connection.onNotification(DidChangeWorkspaceFoldersNotification.type, ({ event: { added, removed } }) => {
    const uris = (folders: readonly WorkspaceFolder[]) => folders.map(({ uri }) => uri);
    const handler = lsp.DocumentUpdateHandler as DrillwrightDocumentUpdateHandler;
    handler.foldersChanged(uris(added), uris(removed));
    settings.foldersChanged(added, removed);
  });
}

/** Asks the editor to tell about them. */
export function withWorkspaceFolders(result: InitializeResult): InitializeResult {
  const workspaceFolders = { supported: true, changeNotifications: true };
  return {
    ...result,
    capabilities: {
      ...result.capabilities,
      workspace: { ...result.capabilities.workspace, workspaceFolders },
    },
  };
}
