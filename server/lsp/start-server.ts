/** The language server, whatever host it runs in. */
import { DocumentState, type LangiumDocument } from "langium";
import {
  addCallHierarchyHandler,
  addCodeActionHandler,
  addCodeLensHandler,
  addCompletionHandler,
  addDocumentHighlightHandler,
  addDocumentLinkHandler,
  addDocumentSymbolHandler,
  addDocumentUpdateHandler,
  addExecuteCommandHandler,
  addFileOperationHandler,
  addFindReferencesHandler,
  addFoldingRangeHandler,
  addFormattingHandler,
  addGotoDefinitionHandler,
  addHoverHandler,
  addInlayHintHandler,
  addRenameHandler,
  addSemanticTokenHandler,
  addSignatureHelpHandler,
  addTextDocumentContentRequestHandler,
  addWorkspaceSymbolHandler,
  type LangiumSharedServices,
} from "langium/lsp";
import type { Connection } from "vscode-languageserver";
import type { DrillwrightServices } from "../../language/core-module.ts";
import { Lowering } from "../../language/lowering/document.ts";
import type { ClientOptions } from "../../shared/protocol/client-options.ts";
import { DEFAULT_SETTINGS, type Settings, settingsFrom } from "../../shared/settings.ts";
import { DiagnosticsPublisher } from "./diagnostics-publisher.ts";
import { handlePlanGoals } from "./handlers/plan-goals.ts";
import { handleProject, tellProjectChanged } from "./handlers/project.ts";
import { handleScore } from "./handlers/score.ts";
import { handleSelectSession } from "./handlers/select-session.ts";
import { handleSelectionRanges, withSelectionRanges } from "./handlers/selection-ranges.ts";
import { handleSessionScore } from "./handlers/session-score.ts";
import { handleSessions } from "./handlers/sessions.ts";
import { type Refreshes, ScorePublisher } from "./score-publisher.ts";
import { Scores } from "./scores.ts";

/** What the server cannot do without a host. */
export interface ServerHost {
  readonly sha256: (content: Uint8Array) => string;
  readonly version: string;
}

/** The part of the server that the services of the language see. */
export interface ServerState {
  scores: Scores | undefined;
  settings: Settings;
  /** Ids of the commands the editor can run. */
  commands: readonly string[];
}

export function newServerState(): ServerState {
  return { scores: undefined, settings: DEFAULT_SETTINGS, commands: [] };
}

/** Wires connection, language and scores, and starts listening. */
export function startServer(
  connection: Connection,
  services: { shared: LangiumSharedServices; drillwright: DrillwrightServices },
  state: ServerState,
  host: ServerHost,
): void {
  const { shared } = services;
  const openDocuments = shared.workspace.TextDocuments;
  const publisher = new DiagnosticsPublisher(connection);
  const lowering = new Lowering(services.drillwright, (uri) => uri.toString());
  const scores = new Scores(services.drillwright, lowering, {
    ...host,
    openFiles: () => openDocuments.keys(),
  });
  state.scores = scores;

  addLanguageHandlers(connection, shared);
  publishMistakes(shared, publisher);
  handleProject(connection, shared);
  handlePlanGoals(connection, shared, lowering);
  handleSessions(connection, scores);
  handleSessionScore(connection, shared, scores);
  handleSelectSession(connection, scores);
  handleScore(connection, scores);
  handleSelectionRanges(connection, shared);

  const scorePublisher = new ScorePublisher(connection, publisher);
  let refreshes: Refreshes = { codeLens: false, inlayHint: false };
  // Nothing is shown before the settings are known: what they hide must not flash up first.
  let settingsKnown = false;
  const show = () => {
    if (settingsKnown) scorePublisher.publish(scores.current(), state.settings, refreshes);
  };
  const refresh = () => {
    scores.refresh().catch((error: unknown) => connection.console.error(`Scoring failed: ${String(error)}`));
  };
  scores.onChange(show);
  shared.workspace.DocumentBuilder.onBuildPhase(DocumentState.Validated, refresh);
  openDocuments.onDidClose(refresh);
  shared.lsp.DocumentUpdateHandler.onWatchedFilesChange(({ changes }) => {
    if (changes.filter(({ uri }) => scores.forget(uri)).length === 0) return;
    refresh();
    tellProjectChanged(connection, false);
  });

  const useSettings = (section: unknown) => {
    state.settings = settingsFrom(section);
    settingsKnown = true;
    show();
  };
  const readSettings = () => {
    connection.workspace.getConfiguration("drillwright").then(useSettings, (error: unknown) => {
      connection.console.warn(`The settings could not be read, so the defaults are used: ${String(error)}`);
      useSettings(undefined);
    });
  };
  let hasConfiguration = false;
  connection.onInitialize((params) => {
    const { workspace } = params.capabilities;
    hasConfiguration = workspace?.configuration ?? false;
    settingsKnown = !hasConfiguration;
    refreshes = {
      codeLens: workspace?.codeLens?.refreshSupport ?? false,
      inlayHint: workspace?.inlayHint?.refreshSupport ?? false,
    };
    state.commands = (params.initializationOptions as ClientOptions | undefined)?.commands ?? [];
    return shared.lsp.LanguageServer.initialize(params).then(withSelectionRanges);
  });
  connection.onInitialized((params) => {
    shared.lsp.LanguageServer.initialized(params);
    if (hasConfiguration) readSettings();
  });
  connection.onDidChangeConfiguration(({ settings }) => {
    if (hasConfiguration) readSettings();
    else useSettings((settings as { drillwright?: unknown } | undefined)?.drillwright);
  });
  openDocuments.listen(connection);
  connection.listen();
}

/** The framework's handlers, but for its own publishing of diagnostics. */
function addLanguageHandlers(connection: Connection, shared: LangiumSharedServices): void {
  addDocumentUpdateHandler(connection, shared);
  addFileOperationHandler(connection, shared);
  addCompletionHandler(connection, shared);
  addFindReferencesHandler(connection, shared);
  addDocumentSymbolHandler(connection, shared);
  addGotoDefinitionHandler(connection, shared);
  addDocumentHighlightHandler(connection, shared);
  addFoldingRangeHandler(connection, shared);
  addFormattingHandler(connection, shared);
  addCodeActionHandler(connection, shared);
  addRenameHandler(connection, shared);
  addHoverHandler(connection, shared);
  addInlayHintHandler(connection, shared);
  addSemanticTokenHandler(connection, shared);
  addExecuteCommandHandler(connection, shared);
  addSignatureHelpHandler(connection, shared);
  addCallHierarchyHandler(connection, shared);
  addCodeLensHandler(connection, shared);
  addTextDocumentContentRequestHandler(connection, shared);
  addDocumentLinkHandler(connection, shared);
  addWorkspaceSymbolHandler(connection, shared);
}

function publishMistakes(shared: LangiumSharedServices, publisher: DiagnosticsPublisher): void {
  const builder = shared.workspace.DocumentBuilder;
  builder.onUpdate((_changed, deleted) => {
    for (const uri of deleted) publisher.setMistakes(uri.toString(), []);
  });
  builder.onDocumentPhase(DocumentState.Validated, (document: LangiumDocument) => {
    publisher.setMistakes(document.uri.toString(), document.diagnostics ?? []);
  });
}
