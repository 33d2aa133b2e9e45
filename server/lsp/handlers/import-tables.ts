import { DocumentState, type LangiumDocument, type Stream, URI, UriUtils } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { CancellationToken, Connection } from "vscode-languageserver";
import type { Document } from "../../../language/generated/tree/ast.ts";
import { isLibraryUri } from "../../../language/library/library.ts";
import {
  type ImportTablesParams,
  importTables,
  type TableImport,
} from "../../../shared/protocol/import-tables.ts";
import { projectDeclarations } from "../../node/project-declarations.ts";
import { CachedDataFiles } from "../cached-data-files.ts";
import type { ScoringHost } from "../scorer.ts";
import { signalOf } from "./signal.ts";

export function handleImportTables(
  connection: Connection,
  { workspace: { FileSystemProvider, LangiumDocuments, DocumentBuilder } }: LangiumSharedServices,
  { sha256 }: ScoringHost,
): void {
  /** What the workspace declares, seen from the folder of a table. */
  const projectAround = (table: string) => {
    const files = LangiumDocuments.all.filter(({ uri }) => !isLibraryUri(uri)) as Stream<
      LangiumDocument<Document>
    >;
    return projectDeclarations(
      files,
      UriUtils.joinPath(UriUtils.dirname(URI.parse(table)), "proposal.drill"),
    );
  };
  connection.onRequest(
    importTables.method,
    async ({ tables }: ImportTablesParams, token: CancellationToken): Promise<TableImport> => {
      await DocumentBuilder.waitUntil(DocumentState.IndexedContent, token);
      // What proposes is loaded with the first table.
      const { proposeTables } = await import("../import-tables.ts");
      const dataFiles = new CachedDataFiles(FileSystemProvider, sha256); // nothing is kept: tables change
      const named = tables.map((uri) => ({ uri, name: UriUtils.basename(URI.parse(uri)) }));
      return proposeTables(named, projectAround(tables[0] ?? ""), dataFiles, signalOf(token));
    },
  );
}
