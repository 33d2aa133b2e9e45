import type { LogOutputChannel } from "vscode";
import type { LanguageServer } from "./language-server.ts";
import type { ToldScores } from "./told-scores.ts";

/** What commands work with. */
export interface Workbench {
  readonly server: LanguageServer;
  readonly output: LogOutputChannel;
  readonly scores: ToldScores;
}
