/** A line over each plan that says which session it is shown with, and one over each block that sums up its goals. */
import type { LangiumDocument } from "langium";
import type { CodeLensProvider } from "langium/lsp";
import type { CodeLens, Command } from "vscode-languageserver";
import { COMMANDS } from "../../shared/commands.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import { inWords } from "../../shared/verdict.ts";
import { blockSummary, sessionSummary } from "../report/summary.ts";
import type { Score, Scores } from "./scores.ts";

export class VerdictCodeLenses implements CodeLensProvider {
  private readonly scores: () => Scores | undefined;
  private readonly isOn: () => boolean;
  /** Commands the editor can run. */
  private readonly commands: () => readonly string[];

  constructor(scores: () => Scores | undefined, isOn: () => boolean, commands: () => readonly string[]) {
    this.scores = scores;
    this.isOn = isOn;
    this.commands = commands;
  }

  provideCodeLens(document: LangiumDocument): CodeLens[] {
    if (!this.isOn()) return [];
    const uri = document.uri.toString();
    return (this.scores()?.current() ?? [])
      .filter(({ summary }) => summary.plan.file === uri)
      .flatMap((score) => [this.planLens(score), ...this.blockLenses(score.report)]);
  }

  private planLens({ summary, report }: Score): CodeLens {
    const title = report === undefined ? (summary.problem ?? "") : sessionSummary(report);
    return { range: summary.range, command: this.command(COMMANDS.pickSession.id, title, summary.plan) };
  }

  private blockLenses(report: ScoreReport | undefined): CodeLens[] {
    return (report?.blocks ?? []).map((block) => {
      const verdict = block.verdict === null ? "" : `${inWords(block.verdict)}: `;
      return { range: block.location.range, command: { title: verdict + blockSummary(block), command: "" } };
    });
  }

  /** A link where the editor knows the command; else only its title. */
  private command(id: string, title: string, argument: unknown): Command {
    return this.commands().includes(id)
      ? { title, command: id, arguments: [argument] }
      : { title, command: "" };
  }
}
