/** Offers to write into a session where each of its blocks was taken to start. */
import type { LangiumDocument } from "langium";
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  type Position,
  type TextEdit,
} from "vscode-languageserver";
import { insertStatementsBelow } from "../../language/checks/edits.ts";
import { DrillwrightCodeActionProvider, isAskedFor } from "../../language/editor/code-action-provider.ts";
import type { DrillwrightEditorServices } from "../../language/editor/editor-module.ts";
import { isSession, isSessionData } from "../../language/generated/tree/ast.ts";
import { startLines } from "../../shared/start-lines.ts";
import type { File } from "./declared.ts";
import type { Scores } from "./scores.ts";
import { DATA_SOURCE, STARTS_GUESSED } from "./verdict-diagnostics.ts";

/** What the language offers, and the starts of blocks for sessions that were scored by a guess. */
export class ServerCodeActionProvider extends DrillwrightCodeActionProvider {
  private readonly scores: () => Scores | undefined;

  constructor(services: DrillwrightEditorServices, scores: () => Scores | undefined) {
    super(services);
    this.scores = scores;
  }

  override getCodeActions(document: LangiumDocument, params: CodeActionParams): CodeAction[] {
    return [...this.startsFixes(document as File, params.context), ...super.getCodeActions(document, params)];
  }

  private startsFixes(document: File, context: CodeActionParams["context"]): CodeAction[] {
    if (!isAskedFor(CodeActionKind.QuickFix, context)) return [];
    return context.diagnostics
      .filter(({ source, code }) => source === DATA_SOURCE && code === STARTS_GUESSED)
      .flatMap((diagnostic): CodeAction[] => {
        const edit = this.startsEdit(document, diagnostic.range.start);
        return edit === undefined
          ? []
          : [
              {
                title: "Write where each block was taken to start",
                kind: CodeActionKind.QuickFix,
                diagnostics: [diagnostic],
                isPreferred: true,
                edit: { changes: { [document.uri.toString()]: [edit] } },
              },
            ];
      });
  }

  /** For the session that was scored at this place. Undefined where it is no longer there. */
  private startsEdit(document: File, { line, character }: Position): TextEdit | undefined {
    const report = this.scores()
      ?.current()
      .sessions.map((scored) => scored.report)
      .find(({ session: { location } }) => {
        const { start } = location.range;
        return (
          location.file === document.uri.toString() && start.line === line && start.character === character
        );
      });
    const session = document.parseResult.value.declarations
      .filter(isSession)
      .find(({ name }) => name === report?.session.name);
    const last = session?.statements.findLast(isSessionData);
    return report && last && insertStatementsBelow(document, last, startLines(report.assignment));
  }
}
