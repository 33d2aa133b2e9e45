/** Makes the paths of used files and of recorded tables something to click on. */
import { AstUtils, type LangiumDocument, type URI, UriUtils } from "langium";
import type { DocumentLinkProvider } from "langium/lsp";
import type { DocumentLink, Range } from "vscode-languageserver";
import { cstOf } from "../checks/edits.ts";
import {
  type Document,
  isSession,
  isSessionData,
  type SessionData,
  type Use,
} from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";
import { savedUri } from "../names/saved-uri.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";

export class DrillwrightDocumentLinkProvider implements DocumentLinkProvider {
  private readonly names: Names;

  constructor(services: DrillwrightEditorServices) {
    this.names = services.names.Names;
  }

  getDocumentLinks(file: LangiumDocument): DocumentLink[] {
    const document = file as LangiumDocument<Document>;
    // A link to nowhere would offer to make an empty file; that a used file is missing is said by a check.
    const uses = this.names
      .usedFiles(document)
      .flatMap(({ use, document: used }) => link(use, used?.uri, "Open the file"));
    const tables = document.parseResult.value.declarations
      .filter(isSession)
      .flatMap((session) => session.statements.filter(isSessionData))
      .flatMap((data) => link(data, tableUri(data), "Open the table"));
    return [...uses, ...tables];
  }
}

/** The table of a session: a path beside the session's file. */
function tableUri(data: SessionData): URI | undefined {
  if (!data.path) return undefined;
  return UriUtils.resolvePath(UriUtils.dirname(savedUri(AstUtils.getDocument(data).uri)), data.path);
}

function link(node: Use | SessionData, target: URI | undefined, tooltip: string): DocumentLink[] {
  const path = cstOf(node, "path");
  if (path === undefined || target === undefined) return [];
  return [{ range: withinQuotes(path.range), target: target.toString(), tooltip }];
}

function withinQuotes({ start, end }: Range): Range {
  return {
    start: { line: start.line, character: start.character + 1 },
    end: { line: end.line, character: end.character - 1 },
  };
}
