/** Shows the files of the built-in library, which exist on no disk, to editors that ask for them. */
import type { TextDocumentContentProvider } from "langium/lsp";
import type { TextDocumentContentParams, TextDocumentContentResult } from "vscode-languageserver";
import { LIBRARY_SCHEME, libraryFiles } from "../library/library.ts";

export class LibraryContentProvider implements TextDocumentContentProvider {
  readonly schemes = [LIBRARY_SCHEME];

  async provideTextDocumentContent({
    uri,
  }: TextDocumentContentParams): Promise<TextDocumentContentResult | undefined> {
    const file = libraryFiles().find((candidate) => candidate.uri.toString() === uri);
    return file && { text: file.text };
  }
}
