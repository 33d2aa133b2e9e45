import { type Disposable, EventEmitter, type Uri } from "vscode";
import type { PlanScore } from "../shared/protocol/plan-score.ts";
import { type ScoresChangedParams, scoresChanged } from "../shared/protocol/scores-changed.ts";
import type { LanguageServer } from "./language-server.ts";
import { scoreAt } from "./score-texts.ts";

/** The scores the server has told. They are gone when it stops. */
export class ToldScores implements Disposable {
  /** Each file's plans with the sessions they are shown with, and its sessions that are shown on no plan. */
  private readonly byFile = new Map<string, Pick<ScoresChangedParams, "plans" | "sessions">>();
  private readonly changed = new EventEmitter<void>();
  private readonly subscriptions: readonly Disposable[];

  readonly onDidChange = this.changed.event;

  constructor(server: LanguageServer) {
    this.subscriptions = [
      this.changed,
      server.hear(scoresChanged, ({ file, plans, sessions }) => {
        if (plans.length + sessions.length === 0) this.byFile.delete(file);
        else this.byFile.set(file, { plans, sessions });
        this.changed.fire();
      }),
      server.onDidStop(() => {
        this.byFile.clear();
        this.changed.fire();
      }),
    ];
  }

  /** The scores a document is about: of the plans it declares, and of plans that are shown with its sessions. */
  about(uri: Uri): readonly PlanScore[] {
    const file = uri.toString();
    return [...this.byFile.values()]
      .flatMap(({ plans }) => plans)
      .filter(({ plan, session }) => plan.file === file || session?.file === file);
  }

  /** The score of the session or plan that stands in a line, else the first that the document is about. */
  at(uri: Uri, line: number): PlanScore | undefined {
    const file = uri.toString();
    const shown = this.about(uri);
    return scoreAt([...shown, ...(this.byFile.get(file)?.sessions ?? [])], file, line);
  }

  dispose(): void {
    for (const subscription of this.subscriptions) subscription.dispose();
  }
}
