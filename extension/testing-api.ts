import type { TestController, TestRunProfile, Uri } from "vscode";
import type { PlanScore } from "../shared/protocol/plan-score.ts";

/** What the extension shows to its own tests. It is no interface for other extensions, and may change any time. */
export interface TestingApi {
  /** Settles when the server has started; rejects when it could not. */
  ready(): Promise<void>;
  /** How often the server has started: also after it has ended by a fault of ours, which nobody else would see. */
  serverStarts(): number;
  /** The scores a document is about, as the server told them last. */
  scoresAbout(uri: Uri): readonly PlanScore[];
  /** The status bar item; undefined while it is hidden. */
  status(): DrawnStatus | undefined;
  /** The item beside the language of a file. */
  projectStatus(): DrawnProjectStatus;
  /** The views, as they are drawn. */
  readonly players: DrawnTree;
  readonly curricula: DrawnTree;
  /** The reports that are open, as pages. */
  reports(): readonly string[];
  /** The goals in the test explorer, and what scores the sessions shown. */
  readonly goalTests: TestController;
  readonly shownGoals: TestRunProfile;
}

export interface DrawnStatus {
  readonly text: string;
  readonly tooltip: string;
  /** What a screen reader says. */
  readonly spoken: string;
  /** What a click runs. */
  readonly command: string;
}

export interface DrawnProjectStatus {
  readonly text: string;
  readonly detail: string;
  /** Whether it waits for what it says. */
  readonly busy: boolean;
  /** What its link runs. */
  readonly command: string;
}

export interface DrawnTree {
  /** Below an item, or the first. */
  children(of?: DrawnItem): Promise<readonly DrawnItem[]>;
  /** What commands of an item's row are given. */
  elementOf(item: DrawnItem): unknown;
}

export interface DrawnItem {
  readonly label: string;
  readonly description: string;
  readonly icon: string;
  /** What the menus of its row ask for. */
  readonly kind: string;
  /** What a screen reader says. */
  readonly spoken: string;
}
