import { Disposable, l10n, StatusBarAlignment, type StatusBarItem, window } from "vscode";
import { COMMANDS } from "../shared/commands.ts";
import { activeDrillEditor } from "./drill-document.ts";
import { longText, shortText } from "./score-texts.ts";
import { withoutIcons } from "./shown-text.ts";
import type { DrawnStatus } from "./testing-api.ts";
import type { ToldScores } from "./told-scores.ts";

/** Says which session the plan at the cursor is shown with. A click picks another. */
export class SessionStatus implements Disposable {
  private readonly scores: ToldScores;
  private readonly item: StatusBarItem;
  private readonly subscription: Disposable;
  private isShown = false;

  constructor(scores: ToldScores) {
    this.scores = scores;
    this.item = window.createStatusBarItem("drillwright.session", StatusBarAlignment.Right, 100);
    this.item.name = l10n.t("Drillwright Session");
    this.item.command = COMMANDS.pickSession.id;
    const update = () => this.update();
    this.subscription = Disposable.from(
      this.item,
      scores.onDidChange(update),
      window.onDidChangeActiveTextEditor(update),
      window.onDidChangeTextEditorSelection(({ textEditor }) => {
        if (textEditor === window.activeTextEditor) update();
      }),
    );
    update();
  }

  /** The item as it is drawn; undefined while it is hidden. */
  get drawn(): DrawnStatus | undefined {
    if (!this.isShown) return undefined;
    const { text, tooltip, accessibilityInformation, command } = this.item;
    const spoken = accessibilityInformation?.label ?? text;
    return { text, tooltip: String(tooltip), spoken, command: String(command) };
  }

  private update(): void {
    const editor = activeDrillEditor();
    const score = editor && this.scores.at(editor.document.uri, editor.selection.active.line);
    this.isShown = score !== undefined;
    if (score === undefined) {
      this.item.hide();
      return;
    }
    const details = longText(score, l10n.t);
    this.item.text = `$(checklist) ${withoutIcons(shortText(score, l10n.t))}`;
    this.item.tooltip = `${details}\n${l10n.t("Click to pick the session.")}`;
    this.item.accessibilityInformation = { label: details, role: "button" };
    this.item.show();
  }

  dispose(): void {
    this.subscription.dispose();
  }
}
