import { type Disposable, EventEmitter, type Uri } from "vscode";
import type { PlanScore } from "../shared/protocol/plan-score.ts";
import { scoresChanged } from "../shared/protocol/scores-changed.ts";
import type { LanguageServer } from "./language-server.ts";
import { planAt } from "./score-texts.ts";

/** The scores the server has told. They are gone when it stops. */
export class ToldScores implements Disposable {
  private readonly byFile = new Map<string, readonly PlanScore[]>();
  private readonly changed = new EventEmitter<void>();
  private readonly subscriptions: readonly Disposable[];

  readonly onDidChange = this.changed.event;

  constructor(server: LanguageServer) {
    this.subscriptions = [
      this.changed,
      server.hear(scoresChanged, ({ file, plans }) => {
        if (plans.length === 0) this.byFile.delete(file);
        else this.byFile.set(file, plans);
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
      .flat()
      .filter(({ plan, session }) => plan.file === file || session?.file === file);
  }

  /** Of these, the one of the plan that stands in a line, else the first. */
  at(uri: Uri, line: number): PlanScore | undefined {
    return planAt(this.about(uri), uri.toString(), line);
  }

  dispose(): void {
    for (const subscription of this.subscriptions) subscription.dispose();
  }
}
