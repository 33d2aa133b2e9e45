/** What the extension sets up in every host. Waits for nothing, and loads the client only for a plan or session. */
import { type ExtensionContext, type LogOutputChannel, window, workspace } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { registerCommands } from "./commands.ts";
import { followDrillEditors, isDrillDocument } from "./drill-document.ts";
import { LanguageServer } from "./language-server.ts";
import { PickedSessions } from "./picked-sessions.ts";
import { showProjectStatus } from "./project-status.ts";
import { SessionStatus } from "./status-bar.ts";
import { GoalTests } from "./test-explorer/goal-tests.ts";
import type { TestingApi } from "./testing-api.ts";
import { ToldScores } from "./told-scores.ts";
import { cardPanels } from "./views/cards.ts";
import { CurriculaView } from "./views/curricula/curricula-view.ts";
import { drawnTree } from "./views/drawn-tree.ts";
import { PageMemory } from "./views/page-memory.ts";
import { PlayersView } from "./views/players/players-view.ts";
import { reportPanels } from "./views/reports.ts";
import { followWalkthrough } from "./walkthrough-progress.ts";

let server: LanguageServer | undefined;

export function activateWith(
  context: ExtensionContext,
  createClient: (output: LogOutputChannel) => Promise<BaseLanguageClient>,
): TestingApi {
  const output = window.createOutputChannel("Drillwright", { log: true });
  const languageServer = new LanguageServer(() => createClient(output));
  server = languageServer;
  const scores = new ToldScores(languageServer);
  const picked = new PickedSessions(languageServer, context.workspaceState);
  const status = new SessionStatus(scores);
  const players = new PlayersView(languageServer);
  const curricula = new CurriculaView(languageServer);
  const projectStatus = showProjectStatus(languageServer);
  const goalTests = new GoalTests(languageServer);
  const pages = new PageMemory(context.workspaceState);
  const reports = reportPanels(languageServer, scores, pages, output);
  const cards = cardPanels(languageServer, pages, output);

  const start = async () => {
    // The client itself tells people that its server does not start.
    await languageServer.start().catch((error: unknown) => {
      output.error(error instanceof Error ? error : String(error));
    });
  };
  if (workspace.textDocuments.some(isDrillDocument)) void start();

  context.subscriptions.push(
    output,
    languageServer,
    scores,
    picked,
    status,
    players,
    curricula,
    goalTests,
    reports,
    cards,
    followDrillEditors(),
    followWalkthrough(scores),
    projectStatus,
    registerCommands({
      extensionId: context.extension.id,
      extensionUri: context.extensionUri,
      server: languageServer,
      output,
      scores,
      picked,
      reports,
      cards,
    }),
    workspace.onDidOpenTextDocument((document) => {
      if (isDrillDocument(document)) void start();
    }),
  );
  return {
    ready: () => languageServer.start(),
    serverStarts: () => languageServer.starts,
    scoresAbout: (uri) => scores.about(uri),
    status: () => status.drawn,
    projectStatus: () => projectStatus.drawn,
    players: drawnTree(players),
    curricula: drawnTree(curricula),
    reports: () => reports.pages,
    goalTests: goalTests.controller,
    shownGoals: goalTests.shown,
  };
}

/** The server ends before the editor goes on. */
export async function deactivate(): Promise<void> {
  await server?.end();
}
