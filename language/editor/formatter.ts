/** Lays out a file, a part of it, or what was just typed. The layout is the same for every team, so options are not asked. */

import type { LangiumDocument, Lexer } from "langium";
import type { Formatter } from "langium/lsp";
import type {
  DocumentFormattingParams,
  DocumentOnTypeFormattingOptions,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  Range,
  TextEdit,
} from "vscode-languageserver";
import { isBefore } from "../../shared/position.ts";
import type { Document } from "../generated/tree/ast.ts";
import { layoutEdits } from "../layout/layout.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";

export class DrillwrightFormatter implements Formatter {
  private readonly lexer: Lexer;

  constructor(services: DrillwrightEditorServices) {
    this.lexer = services.parser.Lexer;
  }

  /** A closing brace lays out what it closes; a line end the line before it. */
  readonly formatOnTypeOptions: DocumentOnTypeFormattingOptions = {
    firstTriggerCharacter: "}",
    moreTriggerCharacter: ["\n"],
  };

  formatDocument(document: LangiumDocument, _params: DocumentFormattingParams): TextEdit[] {
    return [...layoutEdits(document as LangiumDocument<Document>, this.lexer)];
  }

  formatDocumentRange(document: LangiumDocument, { range }: DocumentRangeFormattingParams): TextEdit[] {
    return this.within(document, range);
  }

  formatDocumentOnType(
    document: LangiumDocument,
    { ch, position }: DocumentOnTypeFormattingParams,
  ): TextEdit[] {
    if (ch === "}") {
      const start = openingOf(document.textDocument.getText({ start: ORIGIN, end: position }));
      return this.within(document, { start: document.textDocument.positionAt(start), end: position });
    }
    const line = position.line - 1;
    if (line < 0) return [];
    const end = document.textDocument.positionAt(
      document.textDocument.offsetAt({ line: position.line, character: 0 }) - 1,
    );
    return this.within(document, { start: { line, character: 0 }, end }).filter(
      ({ range }) => range.end.line === line, // the line that is being begun is the editor's
    );
  }

  /** The changes of a layout that touch a range. */
  private within(document: LangiumDocument, { start, end }: Range): TextEdit[] {
    return this.formatDocument(document, {} as DocumentFormattingParams).filter(
      ({ range }) => !isBefore(range.end, start) && !isBefore(end, range.start),
    );
  }
}

const ORIGIN = { line: 0, character: 0 };

/** Where the line begins that holds the brace which the last character closes. */
function openingOf(text: string): number {
  let depth = 0;
  for (let at = text.length - 1; at >= 0; at--) {
    if (text[at] === "}") depth++;
    if (text[at] === "{" && --depth === 0) return text.lastIndexOf("\n", at) + 1;
  }
  return 0;
}
