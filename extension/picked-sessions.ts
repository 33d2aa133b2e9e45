/** Remembers which session was picked for a plan, since the server forgets it when it ends. */
import type { Disposable, Memento } from "vscode";
import type { Declared } from "../shared/protocol/message.ts";
import { type SelectSessionParams, selectSession } from "../shared/protocol/select-session.ts";
import type { LanguageServer } from "./language-server.ts";

const KEY = "pickedSessions";

export class PickedSessions implements Disposable {
  private readonly server: LanguageServer;
  private readonly memory: Memento;
  private readonly subscription: Disposable;

  /** @param memory of the workspace: plans are named by their addresses. */
  constructor(server: LanguageServer, memory: Memento) {
    this.server = server;
    this.memory = memory;
    this.subscription = server.onDidStart(() => void this.tellAll());
  }

  /** Shows a plan with this session, or with its latest again, now and whenever it is opened. */
  async pick(plan: Declared, session: Declared | null): Promise<void> {
    const others = this.all.filter(({ plan: other }) => other.file !== plan.file || other.name !== plan.name);
    await this.memory.update(KEY, session === null ? others : [...others, { plan, session }]);
    await this.server.ask(selectSession, { plan, session });
  }

  dispose(): void {
    this.subscription.dispose();
  }

  private get all(): readonly SelectSessionParams[] {
    return this.memory.get<readonly SelectSessionParams[]>(KEY, []);
  }

  /** One that is no longer there gives way to the latest, which is the server's work. */
  private async tellAll(): Promise<void> {
    for (const params of this.all) await this.server.ask(selectSession, params).catch(() => {});
  }
}
