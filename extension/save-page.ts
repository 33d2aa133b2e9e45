import { l10n, Uri, window, workspace } from "vscode";

/** Asks for a file, and writes a page to it. The file is proposed beside the one that the page is about. */
export async function savePage(title: string, name: string, about: string, page: string): Promise<void> {
  const folder = Uri.joinPath(Uri.parse(about, true), "..");
  const file = await window.showSaveDialog({
    title,
    defaultUri: Uri.joinPath(folder, `${fileName(name)}.html`),
    filters: { HTML: ["html"] },
  });
  if (file !== undefined) await write(file, page);
}

async function write(file: Uri, page: string): Promise<void> {
  await workspace.fs.writeFile(file, new TextEncoder().encode(page));
  void window.showInformationMessage(l10n.t("Saved: {0}", workspace.asRelativePath(file)));
}

/** A name that every file system takes: letters and digits of the title, the rest as hyphens. */
function fileName(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .slice(0, 60)
    .replace(/^-|-$/g, "");
  return plain === "" ? "page" : plain;
}
