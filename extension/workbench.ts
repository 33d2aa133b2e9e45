import type { LogOutputChannel } from "vscode";
import type { LanguageClient } from "vscode-languageclient/node";
import type { ToldScores } from "./told-scores.ts";

/** What commands work with. */
export interface Workbench {
  readonly client: LanguageClient;
  readonly output: LogOutputChannel;
  readonly scores: ToldScores;
}
