/** The goals of plans as tests: a run scores a session, and goes on while shots arrive where somebody wants that. */
import {
  Disposable,
  l10n,
  type TestController,
  type TestRunProfile,
  TestRunProfileKind,
  tests,
} from "vscode";
import { projectChanged } from "../../shared/protocol/project-changed.ts";
import type { LanguageServer } from "../language-server.ts";
import { Soon } from "../soon.ts";
import { sessionAskedFor, sessionShown } from "./choose-session.ts";
import { PAUSE, ScoringRuns } from "./scoring-runs.ts";
import { TestTree } from "./test-tree.ts";

export class GoalTests implements Disposable {
  readonly controller: TestController;
  /** Scores the sessions that are shown. */
  readonly shown: TestRunProfile;
  private readonly subscriptions: Disposable;

  constructor(server: LanguageServer) {
    this.controller = tests.createTestController("drillwright", l10n.t("Drillwright Goals"));
    const tree = new TestTree(this.controller, server);
    const runs = new ScoringRuns(this.controller, server, tree);
    this.controller.resolveHandler = (item) => (item === undefined ? tree.complete() : tree.resolve(item));
    this.controller.refreshHandler = () => tree.complete();
    this.shown = this.controller.createRunProfile(
      l10n.t("Score the Session Shown"),
      TestRunProfileKind.Run,
      (request, token) =>
        request.continuous ? runs.continuously(request, token) : runs.once(request, token, sessionShown),
      true,
      undefined,
      true,
    );
    this.controller.createRunProfile(
      l10n.t("Score Another Session…"),
      TestRunProfileKind.Run,
      (request, token) => runs.once(request, token, sessionAskedFor),
    );
    const follow = new Soon(() => {
      // A server that has ended answers nothing; what follows is asked of the next.
      void tree.refresh().then(
        () => runs.markStale(),
        () => {},
      );
    }, PAUSE);
    this.subscriptions = Disposable.from(
      this.controller,
      follow,
      server.hear(projectChanged, () => follow.ask()),
    );
  }

  dispose(): void {
    this.subscriptions.dispose();
  }
}
