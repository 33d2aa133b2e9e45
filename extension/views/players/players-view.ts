/** The view of players, their sessions, and how the blocks of those came out. */
import { Disposable, EventEmitter, l10n, type TreeDataProvider, type TreeItem, window } from "vscode";
import { project } from "../../../shared/protocol/project.ts";
import { type SessionScore, sessionScore } from "../../../shared/protocol/session-score.ts";
import type { LanguageServer } from "../../language-server.ts";
import { KeptAnswers, keepTrue } from "../kept-answers.ts";
import { type Element, playersOf, type SessionElement } from "./elements.ts";
import { blockItem, playerItem, problemItem, sessionItem } from "./items.ts";

export class PlayersView implements TreeDataProvider<Element>, Disposable {
  private readonly server: LanguageServer;
  private readonly changed = new EventEmitter<Element | undefined>();
  private readonly subscriptions: Disposable;
  /** Of the sessions that were looked at. */
  private readonly scores: KeptAnswers<SessionScore>;

  readonly onDidChangeTreeData = this.changed.event;

  constructor(server: LanguageServer) {
    this.server = server;
    this.scores = new KeptAnswers((session) => server.ask(sessionScore, { session }));
    const view = window.createTreeView("drillwright.players", {
      treeDataProvider: this,
      showCollapseAll: true,
    });
    const draw = () => this.changed.fire(undefined);
    this.subscriptions = Disposable.from(view, this.changed, keepTrue(this.scores, view, server, draw));
  }

  getTreeItem(element: Element): TreeItem {
    switch (element.kind) {
      case "player":
        return playerItem(element);
      case "session":
        return sessionItem(element, this.scores.known(element.session) ?? undefined);
      case "block":
        return blockItem(element);
      case "problem":
        return problemItem(element);
    }
  }

  async getChildren(element?: Element): Promise<Element[]> {
    if (element === undefined) return playersOf(await this.server.ask(project, null));
    if (element.kind === "player") {
      void this.fillIn(element.sessions);
      return [...element.sessions];
    }
    return element.kind === "session" ? this.blocks(element) : [];
  }

  private async blocks({ session }: SessionElement): Promise<Element[]> {
    const score = await this.scores.about(session);
    const problem = score === null ? l10n.t("The session is no longer there.") : score.problem;
    if (score === null || problem !== null) return [{ kind: "problem", text: problem ?? "", session }];
    return score.blocks.map((block) => ({ kind: "block", block, session }));
  }

  /** How sessions came out is filled in later, so that the list is there at once however many there are. */
  private async fillIn(elements: readonly SessionElement[]): Promise<void> {
    const byKey = new Map(elements.map((element) => [element.session, element]));
    await this.scores.inTurn([...byKey.keys()], (session) => this.changed.fire(byKey.get(session)));
  }

  dispose(): void {
    this.subscriptions.dispose();
  }
}
