/** Tells the walkthrough which of its steps somebody has taken, through context keys that its steps wait for. */
import { commands, Disposable, window } from "vscode";
import type { PlanScore } from "../shared/protocol/plan-score.ts";
import { activeDrillEditor } from "./drill-document.ts";
import type { ToldScores } from "./told-scores.ts";

type Step = "planOpened" | "verdictsSeen" | "verdictMoved";

export function followWalkthrough(scores: ToldScores): Disposable {
  const taken = new Set<Step>();
  const take = (step: Step) => {
    if (taken.has(step)) return;
    taken.add(step);
    void commands.executeCommand("setContext", `drillwright.${step}`, true);
  };
  const goals = new Map<string, string>();
  const look = () => {
    const editor = activeDrillEditor();
    if (editor === undefined) return;
    take("planOpened");
    for (const score of scores.about(editor.document.uri)) {
      if (score.verdict === null) continue;
      take("verdictsSeen");
      const before = goals.get(keyOf(score));
      if (before !== undefined && before !== goalsOf(score) && editor.document.isDirty) take("verdictMoved");
      goals.set(keyOf(score), goalsOf(score));
    }
  };
  look();
  return Disposable.from(scores.onDidChange(look), window.onDidChangeActiveTextEditor(look));
}

function keyOf({ plan, session }: PlanScore): string {
  return JSON.stringify([plan, session]);
}

function goalsOf({ verdict, goals }: PlanScore): string {
  return JSON.stringify([verdict, goals]);
}
