import type { LogOutputChannel, Uri } from "vscode";
import type { LanguageServer } from "./language-server.ts";
import type { PickedSessions } from "./picked-sessions.ts";
import type { ToldScores } from "./told-scores.ts";
import type { PagePanels } from "./views/page-panels.ts";

/** What commands work with. */
export interface Workbench {
  /** The extension itself: its id, and where its files are. */
  readonly extensionId: string;
  readonly extensionUri: Uri;
  readonly server: LanguageServer;
  readonly output: LogOutputChannel;
  readonly scores: ToldScores;
  readonly picked: PickedSessions;
  readonly reports: PagePanels;
  readonly cards: PagePanels;
}
