/** The tree of plans, their blocks, and the goals of those, as the editor's test explorer knows it. */
import { type TestController, type TestItem, Uri, workspace } from "vscode";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";
import { type BlockGoals, planGoals } from "../../shared/protocol/plan-goals.ts";
import { type DeclaredAt, project } from "../../shared/protocol/project.ts";
import type { LanguageServer } from "../language-server.ts";
import { rangeAt, startAt } from "../places.ts";
import { shownBesideIcons } from "../shown-text.ts";

export class TestTree {
  private readonly controller: TestController;
  private readonly server: LanguageServer;
  private readonly plans = new WeakMap<TestItem, Declared>();
  /** Every plan of the workspace is listed once somebody has looked for tests; until then those of open files. */
  private isComplete = false;

  constructor(controller: TestController, server: LanguageServer) {
    this.controller = controller;
    this.server = server;
  }

  /** Lists all plans. */
  async complete(): Promise<void> {
    this.isComplete = true;
    await this.refresh();
  }

  /** Follows what is declared. Plans of open files show their goals, so that they can be run from their lines. */
  async refresh(): Promise<void> {
    const { plans } = await this.server.ask(project, null);
    const open = new Set(workspace.textDocuments.map(({ uri }) => uri.toString()));
    const listed = plans.filter(({ file }) => this.isComplete || open.has(file));
    const items = listed.map((plan, index) => this.planItem(plan, index));
    this.controller.items.replace(items);
    for (const item of items) {
      const { file = "" } = this.plans.get(item) ?? {};
      if (open.has(file) || item.children.size > 0) await this.resolve(item);
    }
  }

  /** Lists the blocks and goals of a plan. Those that were there before stay the same, with their results. */
  async resolve(item: TestItem): Promise<void> {
    const plan = this.plans.get(item);
    if (plan === undefined) return;
    const goals = await this.server.ask(planGoals, { plan });
    // What was known before stays while the plan has mistakes: they come and go with every word that is typed.
    item.error = goals?.problem ?? undefined;
    if (item.error === undefined) {
      item.children.replace((goals?.blocks ?? []).map((block, index) => this.blockItem(item, block, index)));
    }
  }

  /** The plan that an item is, or is in. */
  planOf(item: TestItem): { readonly item: TestItem; readonly plan: Declared } | undefined {
    let top = item;
    while (top.parent !== undefined) top = top.parent;
    const plan = this.plans.get(top);
    return plan && { item: top, plan };
  }

  private planItem(plan: DeclaredAt, index: number): TestItem {
    const id = keyOf(plan);
    const item = this.controller.items.get(id) ?? this.create(id, plan.name, plan.file);
    item.range = startAt(plan.range);
    item.sortText = orderText(index);
    item.description = workspace.asRelativePath(Uri.parse(plan.file));
    item.canResolveChildren = true;
    this.plans.set(item, { file: plan.file, name: plan.name });
    return item;
  }

  private blockItem(plan: TestItem, { name, location, goals }: BlockGoals, index: number): TestItem {
    const item = this.below(plan, name, name, location.file);
    item.range = rangeAt(location.range);
    item.sortText = orderText(index);
    const items = goals.map((goal, place) => {
      const child = this.below(item, goal.id, goal.text, goal.location.file);
      child.range = rangeAt(goal.location.range);
      child.sortText = orderText(place);
      return child;
    });
    item.children.replace(items);
    return item;
  }

  /** The child of this id where it is still the same, else a new one: what it says cannot be moved to another file. */
  private below(parent: TestItem, id: string, label: string, file: string): TestItem {
    const known = parent.children.get(id);
    if (known?.uri?.toString() !== Uri.parse(file).toString()) return this.create(id, label, file);
    known.label = shownBesideIcons(label);
    return known;
  }

  private create(id: string, label: string, file: string): TestItem {
    return this.controller.createTestItem(id, shownBesideIcons(label), Uri.parse(file));
  }
}

/** The items below an item, or the first. */
export function* childrenOf(of: TestController | TestItem): Iterable<TestItem> {
  for (const [, item] of "items" in of ? of.items : of.children) yield item;
}

/** Orders as the text does, not by the alphabet. */
function orderText(index: number): string {
  return String(index).padStart(6, "0");
}
