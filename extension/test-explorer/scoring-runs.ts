/** Runs of the test explorer: each scores a session against a plan, and tells how the goals came out. */
import {
  type CancellationToken,
  Disposable,
  l10n,
  type TestController,
  type TestItem,
  TestMessage,
  TestRunRequest,
} from "vscode";
import type { Declared } from "../../shared/protocol/message.ts";
import { projectChanged } from "../../shared/protocol/project-changed.ts";
import { type SessionScore, sessionScore } from "../../shared/protocol/session-score.ts";
import type { LanguageServer } from "../language-server.ts";
import { noSessionText } from "../score-texts.ts";
import { Soon } from "../soon.ts";
import { type ChooseSession, sessionShown } from "./choose-session.ts";
import { log, tell } from "./outcome.ts";
import { childrenOf, type TestTree } from "./test-tree.ts";

/** How long somebody must have stopped typing before scores are looked at anew, in milliseconds. */
export const PAUSE = 400;

/** A plan of a request, and what of it is to be run. */
interface Wanted {
  readonly plan: Declared;
  readonly item: TestItem;
  readonly isWanted: (goal: TestItem) => boolean;
}

/** A plan's session and its score; both null where nobody practised it, the score where the session has gone. */
interface Scored {
  readonly session: Declared | null;
  readonly score: SessionScore | null;
}

export class ScoringRuns {
  private readonly controller: TestController;
  private readonly server: LanguageServer;
  private readonly tree: TestTree;
  /** What the last run of a plan told. */
  private readonly told = new WeakMap<TestItem, Scored>();

  constructor(controller: TestController, server: LanguageServer, tree: TestTree) {
    this.controller = controller;
    this.server = server;
    this.tree = tree;
  }

  async once(request: TestRunRequest, token: CancellationToken, choose: ChooseSession): Promise<void> {
    for (const wanted of await this.wanted(request)) {
      const session = await choose(this.server, wanted.plan);
      if (token.isCancellationRequested) return;
      if (session !== undefined) this.publish(request, wanted, await this.score(session, token), true);
    }
  }

  /** Runs again whenever something would come out otherwise, until nobody wants that any more. */
  async continuously(request: TestRunRequest, token: CancellationToken): Promise<void> {
    const states = new Map<string, string>();
    const look = async () => {
      for (const wanted of await this.wanted(request)) {
        const scored = await this.score((await sessionShown(this.server, wanted.plan)) ?? null, token);
        if (token.isCancellationRequested) return;
        const state = JSON.stringify(scored);
        if (states.get(wanted.item.id) === state) continue;
        states.set(wanted.item.id, state);
        // Each is a run of its own, which asks for no other and is not kept when the window closes.
        const once = new TestRunRequest(request.include, request.exclude, request.profile);
        this.publish(once, wanted, scored, false);
      }
    };
    const soon = new Soon(() => void look().catch(() => {}), PAUSE);
    const subscription = Disposable.from(
      soon,
      this.server.hear(projectChanged, () => soon.ask()),
    );
    token.onCancellationRequested(() => subscription.dispose());
    await look();
  }

  /** Marks results that would come out otherwise now. */
  async markStale(): Promise<void> {
    for (const item of childrenOf(this.controller)) {
      const told = this.told.get(item);
      if (told === undefined) continue;
      const now = await this.score(told.session).catch(() => null);
      if (JSON.stringify(now) !== JSON.stringify(told)) this.controller.invalidateTestResults(item);
    }
  }

  private publish(request: TestRunRequest, wanted: Wanted, scored: Scored, persist: boolean): void {
    const { item, plan, isWanted } = wanted;
    const { session, score } = scored;
    const run = this.controller.createTestRun(request, session?.name, persist);
    const goals = [...childrenOf(item)].flatMap((block) => [...childrenOf(block)]).filter(isWanted);
    if (session === null) {
      log(run, [noSessionText(plan.name, l10n.t)]);
      for (const goal of goals) run.skipped(goal);
    } else if (score === null || score.problem !== null) {
      const problem = score?.problem ?? l10n.t("The session is no longer there.");
      log(run, [problem]);
      run.errored(item, new TestMessage(problem));
    } else {
      const scores = new Map(score.blocks.flatMap(({ goals }) => goals.map((goal) => [goal.id, goal])));
      for (const goal of goals) {
        const found = scores.get(goal.id);
        if (found !== undefined) tell(run, goal, found);
      }
    }
    run.end();
    this.told.set(item, scored);
  }

  /** The plans of a request; all of them, where it names nothing. */
  private async wanted({ include, exclude = [] }: TestRunRequest): Promise<Wanted[]> {
    if (include === undefined) await this.tree.complete();
    const items = include ?? [...childrenOf(this.controller)];
    const wanted: Wanted[] = [];
    for (const [item, of] of Map.groupBy(items, (item) => this.tree.planOf(item)?.item)) {
      const plan = item && this.tree.planOf(item)?.plan;
      if (item === undefined || plan === undefined) continue;
      await this.tree.resolve(item);
      wanted.push({ plan, item, isWanted: (goal) => isWithin(goal, of) && !isWithin(goal, exclude) });
    }
    return wanted;
  }

  private async score(session: Declared | null, token?: CancellationToken): Promise<Scored> {
    return { session, score: session && (await this.server.ask(sessionScore, { session }, token)) };
  }
}

/** Whether an item is one of these, or below one. */
function isWithin(item: TestItem, others: readonly TestItem[]): boolean {
  return others.includes(item) || (item.parent !== undefined && isWithin(item.parent, others));
}
