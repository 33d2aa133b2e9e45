/** The view of players, their sessions, and how the blocks of those came out. */
import { Disposable, EventEmitter, l10n, type TreeDataProvider, type TreeItem, window } from "vscode";
import type { Declared } from "../../../shared/protocol/message.ts";
import { project } from "../../../shared/protocol/project.ts";
import { projectChanged } from "../../../shared/protocol/project-changed.ts";
import { type SessionScore, sessionScore } from "../../../shared/protocol/session-score.ts";
import type { LanguageServer } from "../../language-server.ts";
import { Soon } from "../../soon.ts";
import { type Element, keyOf, playersOf, type SessionElement } from "./elements.ts";
import { blockItem, playerItem, problemItem, sessionItem } from "./items.ts";

/** How long somebody must have stopped typing before the tree is asked for anew, in milliseconds. */
const PAUSE = 400;

export class PlayersView implements TreeDataProvider<Element>, Disposable {
  private readonly server: LanguageServer;
  private readonly changed = new EventEmitter<Element | undefined>();
  private readonly subscriptions: Disposable;
  /** Of the sessions that were looked at. Null for one that is no longer there. */
  private scores = new Map<string, SessionScore | null>();
  private generation = 0;

  readonly onDidChangeTreeData = this.changed.event;

  constructor(server: LanguageServer) {
    this.server = server;
    const refresh = new Soon(() => void this.refresh(), PAUSE);
    this.subscriptions = Disposable.from(
      window.createTreeView("drillwright.players", { treeDataProvider: this, showCollapseAll: true }),
      this.changed,
      refresh,
      server.hear(projectChanged, () => refresh.ask()),
      server.onDidStop(() => this.replace(new Map())),
    );
  }

  getTreeItem(element: Element): TreeItem {
    switch (element.kind) {
      case "player":
        return playerItem(element);
      case "session":
        return sessionItem(element, this.scores.get(keyOf(element.session)) ?? undefined);
      case "block":
        return blockItem(element);
      case "problem":
        return problemItem(element);
    }
  }

  async getChildren(element?: Element): Promise<Element[]> {
    if (element === undefined) return playersOf(await this.server.ask(project, null));
    if (element.kind === "player") {
      void this.scoreInTurn(element.sessions);
      return [...element.sessions];
    }
    return element.kind === "session" ? this.blocks(element) : [];
  }

  private async blocks(element: SessionElement): Promise<Element[]> {
    const { session } = element;
    const score = await this.score(element);
    const problem = score === null ? l10n.t("The session is no longer there.") : score.problem;
    if (score === null || problem !== null) return [{ kind: "problem", text: problem ?? "", session }];
    return score.blocks.map((block) => ({ kind: "block", block, session }));
  }

  /** Fills in how sessions came out, one after the other, so that the list is there at once however many there are. */
  private async scoreInTurn(sessions: readonly SessionElement[]): Promise<void> {
    const { generation } = this;
    for (const element of sessions) {
      if (this.scores.has(keyOf(element.session))) continue;
      await this.score(element).catch(() => null);
      if (generation !== this.generation) return; // the tree is a new one meanwhile
      this.changed.fire(element);
    }
  }

  private async score({ session }: SessionElement): Promise<SessionScore | null> {
    const key = keyOf(session);
    const known = this.scores.get(key);
    if (known !== undefined) return known;
    const { scores } = this;
    const score = await this.ask(session);
    scores.set(key, score);
    return score;
  }

  private ask({ file, name }: Declared): Promise<SessionScore | null> {
    return this.server.ask(sessionScore, { session: { file, name } });
  }

  /** Scores anew what was looked at, and only then draws the tree: its icons do not flicker while somebody types. */
  private async refresh(): Promise<void> {
    const generation = ++this.generation;
    const scores = new Map<string, SessionScore | null>();
    for (const [key, score] of this.scores) {
      if (score !== null) scores.set(key, await this.ask(score.session).catch(() => null));
      if (generation !== this.generation) return;
    }
    this.replace(scores);
  }

  private replace(scores: Map<string, SessionScore | null>): void {
    this.generation++;
    this.scores = scores;
    this.changed.fire(undefined);
  }

  dispose(): void {
    this.subscriptions.dispose();
  }
}
