import { l10n, type TextDocument, Uri, WorkspaceEdit, window, workspace } from "vscode";
import { LANGUAGE_ID } from "../drill-document.ts";
import { usePath } from "./use-path.ts";

/**
 * A new, empty file at a place that somebody chooses; one without a name where no folder is open. Undefined where nothing
 * was chosen.
 * @param folder proposed, below the folder of the workspace that `about` is in, a file that the new one is about.
 */
export async function newDocument(
  title: string,
  folder: string,
  name: string,
  about?: string,
): Promise<TextDocument | undefined> {
  const itsRoot = about === undefined ? undefined : workspace.getWorkspaceFolder(Uri.parse(about));
  const root = itsRoot ?? workspace.workspaceFolders?.[0];
  if (root === undefined) return workspace.openTextDocument({ language: LANGUAGE_ID });
  const uri = await window.showSaveDialog({
    title,
    saveLabel: l10n.t("Create"),
    defaultUri: Uri.joinPath(root.uri, folder, name),
    filters: { Drillwright: ["drill"] },
  });
  if (uri === undefined) return undefined;
  const edit = new WorkspaceEdit();
  edit.createFile(uri, { overwrite: false, ignoreIfExists: false });
  if (await workspace.applyEdit(edit)) return workspace.openTextDocument(uri);
  throw new Error(
    l10n.t("{0} was not created. Choose the name of a file that does not exist yet.", uri.path),
  );
}

/** The paths by which a file uses others, as far as it can reach them; each once. */
export function usesIn(document: TextDocument, files: Iterable<string>): string[] {
  const { uri } = document;
  return [...new Set(files)]
    .map((file) => Uri.parse(file))
    .filter(({ scheme, authority }) => scheme === uri.scheme && authority === uri.authority)
    .map(({ path }) => usePath(uri.path, path));
}
