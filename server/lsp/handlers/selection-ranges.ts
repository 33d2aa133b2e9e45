import { DocumentState, type LangiumDocuments, URI } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { Connection, InitializeResult } from "vscode-languageserver";
import { selectionRanges } from "../../../language/editor/selection-ranges.ts";

/** The framework knows no selection ranges, so the capability and the handler are ours. */
export function withSelectionRanges(result: InitializeResult): InitializeResult {
  return { ...result, capabilities: { ...result.capabilities, selectionRangeProvider: true } };
}

export function handleSelectionRanges(connection: Connection, { workspace }: LangiumSharedServices): void {
  const documents: LangiumDocuments = workspace.LangiumDocuments;
  connection.onSelectionRanges(async ({ textDocument, positions }, token) => {
    const uri = URI.parse(textDocument.uri);
    await workspace.DocumentBuilder.waitUntil(DocumentState.Parsed, uri, token);
    const document = documents.getDocument(uri);
    return document === undefined ? null : selectionRanges(document, positions);
  });
}
