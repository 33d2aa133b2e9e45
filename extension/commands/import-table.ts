import { l10n, Uri, window } from "vscode";
import { importTables } from "../../shared/protocol/import-tables.ts";
import { agreeToImport } from "../new-files/agree-to-import.ts";
import { openProposal } from "../new-files/open-proposal.ts";
import type { Workbench } from "../workbench.ts";

/** Shows what the columns of tables are taken for, and opens a new file made of that where somebody agrees. */
export async function importTable({ server }: Workbench, given?: unknown, all?: unknown): Promise<void> {
  const tables = urisIn(all) ?? urisIn([given]) ?? (await chooseTables());
  const [first] = tables;
  if (first === undefined) return;
  const folder = Uri.joinPath(first, "..");
  if (tables.some((table) => Uri.joinPath(table, "..").toString() !== folder.toString())) {
    void window.showWarningMessage(l10n.t("Tables in different folders are imported one folder at a time."));
    return;
  }
  const found = await server.ask(importTables, { tables: tables.map((table) => table.toString()) });
  if (found.problems.length > 0) void window.showWarningMessage(found.problems.join(" "));
  if (found.text !== "" && (await agreeToImport(found))) await openProposal(first, found.text);
}

function urisIn(given: unknown): readonly Uri[] | undefined {
  const uris = Array.isArray(given) ? given.filter((each) => each instanceof Uri) : [];
  return uris.length === 0 ? undefined : uris;
}

async function chooseTables(): Promise<readonly Uri[]> {
  const filters = { [l10n.t("Tables of Shots")]: ["csv", "tsv", "json", "jsonl", "gz", "txt"] };
  return (await window.showOpenDialog({ canSelectMany: true, filters })) ?? [];
}
