/** The observed value at the end of the line of each goal. */
import type { LangiumDocument } from "langium";
import type { InlayHintProvider } from "langium/lsp";
import type { InlayHint, InlayHintParams } from "vscode-languageserver";
import type { Evidence, Verdict } from "../../shared/score-report.ts";
import { inWords } from "../../shared/verdict.ts";
import type { Scores } from "./scores.ts";

export class VerdictInlayHints implements InlayHintProvider {
  private readonly scores: () => Scores | undefined;
  private readonly isOn: (uri: string) => boolean;

  constructor(scores: () => Scores | undefined, isOn: (uri: string) => boolean) {
    this.scores = scores;
    this.isOn = isOn;
  }

  getInlayHints(document: LangiumDocument, { range }: InlayHintParams): InlayHint[] {
    const uri = document.uri.toString();
    if (!this.isOn(uri)) return [];
    const hints: InlayHint[] = [];
    for (const { summary, session } of this.scores()?.current().plans ?? []) {
      if (summary.plan.file !== uri || session === undefined) continue;
      for (const { location, verdict, evidence } of session.report.blocks.flatMap(
        ({ criteria }) => criteria,
      )) {
        const { end } = location.range;
        if (end.line < range.start.line || end.line > range.end.line) continue;
        hints.push({ position: end, label: hint(verdict, evidence), paddingLeft: true });
      }
    }
    return hints;
  }
}

/** Short: editors cut long hints, and what was asked for stands just before. */
function hint(verdict: Verdict, { brief, needs }: Evidence): string {
  const seen = [brief, needs ?? ""].filter((part) => part !== "").join(", ");
  return seen === "" ? inWords(verdict) : `${inWords(verdict)}: ${seen}`;
}
