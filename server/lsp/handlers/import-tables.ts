import { URI, UriUtils } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { CancellationToken, Connection } from "vscode-languageserver";
import {
  type ImportTablesParams,
  importTables,
  type TableImport,
} from "../../../shared/protocol/import-tables.ts";
import { CachedDataFiles } from "../cached-data-files.ts";
import type { ScoringHost } from "../scorer.ts";
import { signalOf } from "./signal.ts";

export function handleImportTables(
  connection: Connection,
  { workspace: { FileSystemProvider } }: LangiumSharedServices,
  { sha256 }: ScoringHost,
): void {
  connection.onRequest(
    importTables.method,
    async ({ tables }: ImportTablesParams, token: CancellationToken): Promise<TableImport> => {
      // What proposes is loaded with the first table.
      const { proposeTables } = await import("../import-tables.ts");
      const dataFiles = new CachedDataFiles(FileSystemProvider, sha256); // nothing is kept: tables change
      const named = tables.map((uri) => ({ uri, name: UriUtils.basename(URI.parse(uri)) }));
      return proposeTables(named, dataFiles, signalOf(token));
    },
  );
}
