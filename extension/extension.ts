/** Where the editor enters. Activation starts the language server and waits for nothing. */
import { type ExtensionContext, window } from "vscode";
import type { LanguageClient } from "vscode-languageclient/node";
import { registerCommands } from "./commands.ts";
import { createLanguageClient } from "./language-client.ts";
import { SessionStatus } from "./status-bar.ts";
import type { TestingApi } from "./testing.ts";
import { ToldScores } from "./told-scores.ts";

let client: LanguageClient | undefined;

export function activate(context: ExtensionContext): TestingApi {
  const output = window.createOutputChannel("Drillwright", { log: true });
  client = createLanguageClient(context, output);
  const scores = new ToldScores(client);
  const status = new SessionStatus(scores);
  context.subscriptions.push(output, scores, status, registerCommands({ client, output, scores }));

  const ready = client.start();
  // The client itself tells people that its server does not start.
  ready.catch((error: unknown) => output.error(error instanceof Error ? error : String(error)));
  return { ready, scoresAbout: (uri) => scores.about(uri), statusText: () => status.text };
}

/** The server ends before the editor goes on; one that never ran has nothing to end. */
export async function deactivate(): Promise<void> {
  if (client?.isRunning()) await client.dispose();
}
