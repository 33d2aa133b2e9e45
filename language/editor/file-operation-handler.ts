/** Keeps `use` and `data` paths true when files or folders are renamed or moved. */
import { type AstNode, type LangiumDocument, type LangiumDocuments, URI, UriUtils } from "langium";
import type { FileOperationHandler, LangiumSharedServices } from "langium/lsp";
import type {
  FileOperationOptions,
  FileRename,
  RenameFilesParams,
  TextEdit,
  WorkspaceEdit,
} from "vscode-languageserver";
import { textLiteral } from "../../shared/text-literal.ts";
import { cstOf } from "../checks/edits.ts";
import { type Document, isSession, isSessionData } from "../generated/tree/ast.ts";
import { isLibraryUri } from "../library/library.ts";
import { usePath, useTarget } from "../names/use-target.ts";

type File = LangiumDocument<Document>;

export class DrillwrightFileOperationHandler implements FileOperationHandler {
  /** Any file: a plan, a table, or a folder that holds some. */
  readonly fileOperationOptions: FileOperationOptions = {
    willRename: { filters: [{ pattern: { glob: "**/*" } }] },
  };
  private readonly documents: LangiumDocuments;

  constructor({ workspace }: LangiumSharedServices) {
    this.documents = workspace.LangiumDocuments;
  }

  /** The changes to make before the files move. Linear in the `use` and `data` statements of the workspace. */
  willRenameFiles({ files }: RenameFilesParams): WorkspaceEdit | null {
    const moves = files.map(moveOf);
    const changes: Record<string, TextEdit[]> = {};
    for (const document of this.documents.all) {
      if (isLibraryUri(document.uri)) continue;
      const edits = editsIn(document as File, moves);
      if (edits.length > 0) changes[document.uri.toString()] = edits;
    }
    return Object.keys(changes).length === 0 ? null : { changes };
  }
}

/** Where a file will be; where it is now, if it does not move. */
type Move = (uri: URI) => URI | undefined;

function moveOf({ oldUri, newUri }: FileRename): Move {
  const from = URI.parse(oldUri).toString();
  const to = URI.parse(newUri).toString();
  return (uri) => {
    const text = uri.toString();
    if (text === from) return URI.parse(to);
    return text.startsWith(`${from}/`) ? URI.parse(to + text.slice(from.length)) : undefined;
  };
}

function editsIn(document: File, moves: readonly Move[]): TextEdit[] {
  const moved = (uri: URI) => moves.reduce<URI | undefined>((found, move) => found ?? move(uri), undefined);
  const here = document.uri;
  const newHere = moved(here);
  const edits: TextEdit[] = [];
  const change = (node: AstNode, target: URI, write: (from: URI, to: URI) => string) => {
    const newTarget = moved(target);
    if (newTarget === undefined && newHere === undefined) return;
    const path = cstOf(node, "path");
    const text = textLiteral(write(newHere ?? here, newTarget ?? target));
    if (path !== undefined && path.text !== text) edits.push({ range: path.range, newText: text });
  };
  for (const use of document.parseResult.value.uses) {
    const target = useTarget(use, here);
    if (target !== undefined) change(use, target, usePath);
  }
  for (const session of document.parseResult.value.declarations.filter(isSession)) {
    for (const data of session.statements.filter(isSessionData)) {
      if (data.path === undefined || /^[a-z][a-z0-9+.-]+:/i.test(data.path)) continue;
      const target = UriUtils.joinPath(UriUtils.dirname(here), data.path.replaceAll("\\", "/"));
      change(data, target, (from, to) => UriUtils.relative(UriUtils.dirname(from), to));
    }
  }
  return edits;
}
