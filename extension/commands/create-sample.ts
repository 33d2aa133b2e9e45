import { commands, FileSystemError, l10n, Uri, window, workspace } from "vscode";
import type { Workbench } from "../workbench.ts";

/** Name of the folder, with a number where it is taken. */
const FOLDER = "wrenlow-practice-centre";

/**
 * Writes our example centre into a new folder and offers to open it. Asks where, unless the folder to create it in is
 * given, and never touches what exists.
 */
export async function createSample({ extensionUri }: Workbench, given?: unknown): Promise<Uri | undefined> {
  const parent = given instanceof Uri ? given : await askWhere();
  if (parent === undefined) return undefined;
  const folder = await freeFolder(parent);
  const content = await workspace.fs.readFile(Uri.joinPath(extensionUri, "sample.json"));
  const files: Record<string, string> = JSON.parse(new TextDecoder().decode(content));
  for (const [path, text] of Object.entries(files)) {
    await workspace.fs.writeFile(Uri.joinPath(folder, path), new TextEncoder().encode(text));
  }
  void offer(folder);
  return folder;
}

async function askWhere(): Promise<Uri | undefined> {
  const chosen = await window.showOpenDialog({
    title: l10n.t("Where to Create the Sample Coaching Folder"),
    openLabel: l10n.t("Create Here"),
    canSelectFiles: false,
    canSelectFolders: true,
  });
  return chosen?.[0];
}

async function freeFolder(parent: Uri): Promise<Uri> {
  for (let number = 1; ; number++) {
    const folder = Uri.joinPath(parent, number === 1 ? FOLDER : `${FOLDER}-${number}`);
    if (!(await exists(folder))) return folder;
  }
}

async function exists(uri: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(uri);
    return true;
  } catch (error) {
    if (error instanceof FileSystemError && error.code === "FileNotFound") return false;
    throw error;
  }
}

/** Opens the folder at once where no other is open; else somebody may be at work, and is asked. */
async function offer(folder: Uri): Promise<void> {
  if (workspace.workspaceFolders === undefined) {
    await commands.executeCommand("vscode.openFolder", folder);
    return;
  }
  const here = l10n.t("Open");
  const elsewhere = l10n.t("Open in a New Window");
  const answer = await window.showInformationMessage(
    l10n.t(
      "The sample coaching folder was created in {0}.",
      folder.scheme === "file" ? folder.fsPath : folder.path,
    ),
    here,
    elsewhere,
  );
  if (answer !== undefined)
    await commands.executeCommand("vscode.openFolder", folder, { forceNewWindow: answer === elsewhere });
}
