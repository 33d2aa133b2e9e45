import { Position, Uri, WorkspaceEdit, window, workspace } from "vscode";

/** Opens a file beside a table that is not saved yet, with this text. What is there already is left alone. */
export async function openProposal(table: Uri, text: string): Promise<void> {
  const file = (await freePlace(table)).with({ scheme: "untitled" });
  const document = await workspace.openTextDocument(file);
  const edit = new WorkspaceEdit();
  edit.insert(file, new Position(0, 0), text);
  await workspace.applyEdit(edit);
  await window.showTextDocument(document);
}

/** `monday.drill` beside `monday.csv.gz`, else `monday-2.drill`, and so on. */
async function freePlace(table: Uri): Promise<Uri> {
  const base = (table.path.split("/").at(-1) ?? "").replace(
    /(?:\.(?:csv|tsv|txt|json|jsonl))?(?:\.gz)?$/i,
    "",
  );
  for (let number = 1; ; number++) {
    const place = Uri.joinPath(table, "..", `${base || "table"}${number === 1 ? "" : `-${number}`}.drill`);
    if (!(await isTaken(place))) return place;
  }
}

async function isTaken(place: Uri): Promise<boolean> {
  if (workspace.textDocuments.some(({ uri }) => uri.path === place.path)) return true;
  return workspace.fs.stat(place).then(
    () => true,
    () => false,
  );
}
