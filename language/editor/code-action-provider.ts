/** Offers the fixes that checks have found together with their findings, and refactorings of what is at the cursor. */
import type { AstNode, LangiumDocument } from "langium";
import type { CodeActionProvider } from "langium/lsp";
import {
  type CodeAction,
  type CodeActionContext,
  CodeActionKind,
  type CodeActionParams,
  type Diagnostic,
} from "vscode-languageserver";
import type { Fix } from "../checks/check.ts";
import { type DiagnosticData, MISTAKE_SOURCE } from "../checks/document-validator.ts";
import type { Document } from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";
import { REFACTORINGS } from "./code-actions/refactorings.ts";
import type { DrillwrightEditorServices } from "./editor-module.ts";
import { leafAt } from "./words.ts";

export class DrillwrightCodeActionProvider implements CodeActionProvider {
  private readonly names: Names;

  constructor(services: DrillwrightEditorServices) {
    this.names = services.names.Names;
  }

  getCodeActions(document: LangiumDocument, { context, range }: CodeActionParams): CodeAction[] {
    const isWanted = (kind: CodeActionKind) => isAskedFor(kind, context);
    const fixes = isWanted(CodeActionKind.QuickFix)
      ? context.diagnostics
          .filter(({ source }) => source === MISTAKE_SOURCE)
          .flatMap((diagnostic) =>
            fixesOf(diagnostic, document).map((fix, index) =>
              quickFix(fix, index === 0, diagnostic, document),
            ),
          )
      : [];
    return [...fixes, ...this.refactorings(document as LangiumDocument<Document>, range, isWanted)];
  }

  /** What can be done with the node at the cursor and those around it. */
  private refactorings(
    document: LangiumDocument<Document>,
    { start }: CodeActionParams["range"],
    isWanted: (kind: CodeActionKind) => boolean,
  ): CodeAction[] {
    const wanted = REFACTORINGS.filter(({ kind }) => isWanted(kind));
    if (wanted.length === 0 || document.parseResult.parserErrors.length > 0) return [];
    const nodes: AstNode[] = [];
    for (let node = leafAt(document, start)?.astNode as AstNode | undefined; node; node = node.$container) {
      nodes.push(node);
    }
    const context = { document, names: this.names };
    return wanted.flatMap(({ kind, offer }) =>
      nodes.flatMap((node) =>
        offer(node, context).map(({ title, edits }) => ({ title, kind, edit: editOf(edits, document) })),
      ),
    );
  }
}

/** Kinds are a hierarchy of names: who asks for all kinds asks for quick fixes too. */
export function isAskedFor(kind: CodeActionKind, { only }: CodeActionContext): boolean {
  if (only === undefined) return true;
  return only.some(
    (asked) => asked === CodeActionKind.Empty || kind === asked || kind.startsWith(`${asked}.`),
  );
}

/** The fixes of a diagnostic. Clients need not send back the data they were given with it. */
function fixesOf(diagnostic: Diagnostic, document: LangiumDocument): readonly Fix[] {
  const complete = diagnostic.data
    ? diagnostic
    : document.diagnostics?.find(
        ({ code, range }) => code === diagnostic.code && sameRange(range, diagnostic.range),
      );
  return (complete?.data as DiagnosticData | undefined)?.fixes ?? [];
}

function sameRange(a: Diagnostic["range"], b: Diagnostic["range"]): boolean {
  return (
    a.start.line === b.start.line &&
    a.start.character === b.start.character &&
    a.end.line === b.end.line &&
    a.end.character === b.end.character
  );
}

function quickFix(
  { title, edits }: Fix,
  isFirst: boolean,
  diagnostic: Diagnostic,
  document: LangiumDocument,
): CodeAction {
  return {
    title,
    kind: CodeActionKind.QuickFix,
    diagnostics: [diagnostic],
    ...(isFirst ? { isPreferred: true } : {}),
    edit: editOf(edits, document),
  };
}

function editOf(edits: Fix["edits"], { textDocument }: LangiumDocument): NonNullable<CodeAction["edit"]> {
  return { changes: { [textDocument.uri]: edits.map((edit) => ({ ...edit })) } };
}
