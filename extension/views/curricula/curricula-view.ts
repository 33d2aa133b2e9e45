/** The view of curricula, their steps, and where every player stands. */
import { Disposable, EventEmitter, l10n, type TreeDataProvider, type TreeItem, window } from "vscode";
import { type CurriculumPlayers, curriculumPlayers } from "../../../shared/protocol/curriculum-players.ts";
import { type DeclaredAt, project } from "../../../shared/protocol/project.ts";
import type { LanguageServer } from "../../language-server.ts";
import { today } from "../../today.ts";
import { KeptAnswers, keepTrue } from "../kept-answers.ts";
import { sharedNames } from "../shared-names.ts";
import type { Element, NoteElement, StepElement } from "./elements.ts";
import { curriculumItem, noteItem, playerItem, stepItem } from "./items.ts";

export class CurriculaView implements TreeDataProvider<Element>, Disposable {
  private readonly server: LanguageServer;
  private readonly changed = new EventEmitter<Element | undefined>();
  private readonly subscriptions: Disposable;
  /** Of the curricula that were looked at. */
  private readonly standings: KeptAnswers<CurriculumPlayers>;

  readonly onDidChangeTreeData = this.changed.event;

  constructor(server: LanguageServer) {
    this.server = server;
    this.standings = new KeptAnswers((curriculum) =>
      server.ask(curriculumPlayers, { curriculum, today: today() }),
    );
    const view = window.createTreeView("drillwright.curricula", {
      treeDataProvider: this,
      showCollapseAll: true,
    });
    const draw = () => this.changed.fire(undefined);
    this.subscriptions = Disposable.from(view, this.changed, keepTrue(this.standings, view, server, draw));
  }

  getTreeItem(element: Element): TreeItem {
    switch (element.kind) {
      case "curriculum":
        return curriculumItem(element);
      case "step":
        return stepItem(element);
      case "player":
        return playerItem(element);
      case "note":
        return noteItem(element);
    }
  }

  async getChildren(element?: Element): Promise<Element[]> {
    if (element === undefined) return this.curricula();
    if (element.kind === "curriculum") return this.steps(element.curriculum);
    if (element.kind !== "step") return [];
    return element.step.players.map((player) => {
      return { kind: "player", step: element, player, session: player.session };
    });
  }

  private async curricula(): Promise<Element[]> {
    const { curricula } = await this.server.ask(project, null);
    const isOpen = curricula.length === 1;
    const isShared = sharedNames(curricula);
    return curricula.map((curriculum) => {
      return { kind: "curriculum", curriculum, isNameShared: isShared(curriculum), isOpen };
    });
  }

  private async steps(curriculum: DeclaredAt): Promise<Element[]> {
    const standing = await this.standings.about(curriculum);
    const note = (text: string, isProblem: boolean): NoteElement => {
      return { kind: "note", curriculum, text, isProblem };
    };
    if (standing === null) return [note(l10n.t("The curriculum is no longer there."), true)];
    const { steps, problem } = standing;
    if (problem !== null) return [note(problem, true)];
    if (steps.length === 0)
      return [note(l10n.t("The curriculum has no steps yet. Write a step for each of its plans."), false)];
    const elements = steps.map((step, index): StepElement => {
      return { kind: "step", curriculum, step, place: index + 1, of: steps.length };
    });
    if (steps.some(({ players }) => players.length > 0)) return elements;
    const nobody = l10n.t(
      "Nobody has practised one of these plans yet. Declare a session: it names the plan, the player, the date and the data.",
    );
    return [note(nobody, false), ...elements];
  }

  dispose(): void {
    this.subscriptions.dispose();
  }
}
