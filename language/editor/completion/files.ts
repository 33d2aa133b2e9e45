/** The files that a path can name. */
import { type FileSystemProvider, type LangiumDocument, type LangiumDocuments, UriUtils } from "langium";
import { type CompletionItem, CompletionItemKind } from "vscode-languageserver";
import type { Document } from "../../generated/tree/ast.ts";
import { isLibraryUri } from "../../library/library.ts";
import type { Names } from "../../names/names.ts";
import { savedUri } from "../../names/saved-uri.ts";
import { FILE_ENDING, usePath } from "../../names/use-target.ts";
import { inWords } from "../descriptions/markdown.ts";
import type { DrillwrightEditorServices } from "../editor-module.ts";
import { type Offers, type Place, RANK, sortText, textEdit } from "./place.ts";

/** How many files are offered at once. */
const MOST_FILES = 50;

/** How many of a file's names are shown beside it. */
const MOST_NAMES = 3;

export class FileOffers {
  private readonly names: Names;
  private readonly documents: LangiumDocuments;
  private readonly fileSystem: FileSystemProvider;

  constructor(services: DrillwrightEditorServices) {
    this.names = services.names.Names;
    this.documents = services.shared.workspace.LangiumDocuments;
    this.fileSystem = services.shared.workspace.FileSystemProvider;
  }

  /** Plan files of the workspace that are not used yet, the nearest first. Linear in the files of the workspace. */
  used(place: Place): Offers {
    const { document } = place;
    const known = new Set([
      document.uri.toString(),
      ...this.names.usedFiles(document).map(({ uri }) => uri.toString()),
    ]);
    const typed = this.typedUse(place);
    const files = this.documents.all
      .filter(({ uri }) => uri.scheme === savedUri(document.uri).scheme && !isLibraryUri(uri))
      .filter(({ uri }) => !known.has(uri.toString()) || uri.toString() === typed)
      .map((file) => ({ file: file as LangiumDocument<Document>, path: usePath(document.uri, file.uri) }))
      .filter(({ path }) => place.matches(path))
      .toArray()
      .sort((a, b) => distance(a.path) - distance(b.path) || (a.path < b.path ? -1 : 1));
    const items = files.slice(0, MOST_FILES).map(
      ({ file, path }, index): CompletionItem => ({
        label: path,
        kind: CompletionItemKind.File,
        detail: declaredBy(file),
        textEdit: textEdit(place, path),
        sortText: sortText(RANK.names, index),
      }),
    );
    return { items, isIncomplete: files.length > MOST_FILES };
  }

  /** The entries of the folder that has been typed so far, for the table of a session. */
  async tables(place: Place): Promise<Offers> {
    const { document, token } = place;
    const folder = token.typed.slice(0, token.typed.lastIndexOf("/") + 1);
    const uri = UriUtils.resolvePath(UriUtils.dirname(savedUri(document.uri)), folder || ".");
    const entries = await this.fileSystem.readDirectory(uri).catch(() => []);
    const paths = entries
      .map((entry) => ({ isFolder: entry.isDirectory, name: UriUtils.basename(entry.uri) }))
      .filter(({ name }) => !name.startsWith(".") && !name.endsWith(FILE_ENDING))
      .map(({ isFolder, name }) => `${folder}${name}${isFolder ? "/" : ""}`)
      .sort();
    if (/^(\.\.\/)*$/.test(folder)) paths.push(`${folder}../`);
    const items = paths
      .filter((path) => place.matches(path) && !(token.quotes === "none" && path.endsWith("/")))
      .map((path, index) => tableItem(place, path, index));
    return { items: items.slice(0, MOST_FILES), isIncomplete: items.length > MOST_FILES };
  }

  /** The file that the path at the cursor already names. */
  private typedUse({ document, token }: Place): string | undefined {
    const { uses } = document.parseResult.value;
    const use = uses.find(({ $cstNode: cst }) => cst && cst.offset <= token.start && token.start <= cst.end);
    return this.names
      .usedFiles(document)
      .find((file) => file.use === use)
      ?.uri.toString();
  }
}

function tableItem(place: Place, path: string, index: number): CompletionItem {
  const isFolder = path.endsWith("/");
  const edit = textEdit(place, path);
  return {
    label: path,
    kind: isFolder ? CompletionItemKind.Folder : CompletionItemKind.File,
    // The path goes on behind a folder: its text stays open.
    textEdit: isFolder ? { ...edit, newText: path } : edit,
    sortText: sortText(RANK.names, index),
  };
}

/** How many folders lie between. */
function distance(path: string): number {
  return path.split("/").length;
}

function declaredBy(file: LangiumDocument<Document>): string {
  const names = file.parseResult.value.declarations.flatMap(({ name }) => (name ? [name] : []));
  const more = names.length - MOST_NAMES;
  return inWords(more > 0 ? [...names.slice(0, MOST_NAMES), `${more} more`] : names);
}
