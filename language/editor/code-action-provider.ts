/** Offers the fixes that checks have found together with their findings. */
import type { LangiumDocument } from "langium";
import type { CodeActionProvider } from "langium/lsp";
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  type Diagnostic,
} from "vscode-languageserver";
import type { Fix } from "../checks/check.ts";
import { type DiagnosticData, MISTAKE_SOURCE } from "../checks/document-validator.ts";

export class DrillwrightCodeActionProvider implements CodeActionProvider {
  getCodeActions(document: LangiumDocument, { context }: CodeActionParams): CodeAction[] {
    if (context.only !== undefined && !context.only.some(includesQuickFixes)) return [];
    return context.diagnostics
      .filter(({ source }) => source === MISTAKE_SOURCE)
      .flatMap((diagnostic) =>
        fixesOf(diagnostic, document).map((fix, index) => quickFix(fix, index === 0, diagnostic, document)),
      );
  }
}

/** Kinds are a hierarchy of names: who asks for all kinds asks for quick fixes too. */
function includesQuickFixes(kind: string): boolean {
  return kind === CodeActionKind.Empty || kind === CodeActionKind.QuickFix;
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
    edit: { changes: { [document.textDocument.uri]: edits.map((edit) => ({ ...edit })) } },
  };
}
