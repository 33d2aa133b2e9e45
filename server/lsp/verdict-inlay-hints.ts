/** The observed value at the end of the line of each goal. */
import type { LangiumDocument } from "langium";
import type { InlayHintProvider } from "langium/lsp";
import type { InlayHint, InlayHintParams } from "vscode-languageserver";
import { inWords } from "../../shared/verdict.ts";
import type { Scores } from "./scores.ts";

export class VerdictInlayHints implements InlayHintProvider {
  private readonly scores: () => Scores | undefined;
  private readonly isOn: () => boolean;

  constructor(scores: () => Scores | undefined, isOn: () => boolean) {
    this.scores = scores;
    this.isOn = isOn;
  }

  getInlayHints(document: LangiumDocument, { range }: InlayHintParams): InlayHint[] {
    if (!this.isOn()) return [];
    const uri = document.uri.toString();
    const hints: InlayHint[] = [];
    for (const { summary, report } of this.scores()?.current() ?? []) {
      if (summary.plan.file !== uri || report === undefined) continue;
      for (const { location, verdict, evidence } of report.blocks.flatMap(({ criteria }) => criteria)) {
        const { end } = location.range;
        if (end.line < range.start.line || end.line > range.end.line) continue;
        hints.push({ position: end, label: `${inWords(verdict)}: ${evidence.observed}`, paddingLeft: true });
      }
    }
    return hints;
  }
}
