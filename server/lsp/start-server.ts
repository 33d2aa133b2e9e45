/** The language server, whatever host it runs in. */
import { DocumentState, delayNextTick, type LangiumDocument } from "langium";
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
import type { Connection, WorkspaceFolder } from "vscode-languageserver";
import type { DrillwrightServices } from "../../language/core-module.ts";
import { isLibraryUri } from "../../language/library/library.ts";
import { Lowering } from "../../language/lowering/document.ts";
import type { ClientOptions } from "../../shared/protocol/client-options.ts";
import { DiagnosticsPublisher } from "./diagnostics-publisher.ts";
import { EditorSettings } from "./editor-settings.ts";
import { handleCurriculumPlayers } from "./handlers/curriculum-players.ts";
import { handleImportTables } from "./handlers/import-tables.ts";
import { handlePlanCard } from "./handlers/plan-card.ts";
import { handlePlanGoals } from "./handlers/plan-goals.ts";
import { handleProject, tellProjectChanged } from "./handlers/project.ts";
import { handleScore } from "./handlers/score.ts";
import { handleSelectSession } from "./handlers/select-session.ts";
import { handleSelectionRanges, withSelectionRanges } from "./handlers/selection-ranges.ts";
import { handleSessionReport } from "./handlers/session-report.ts";
import { handleSessionScore } from "./handlers/session-score.ts";
import { handleSessions } from "./handlers/sessions.ts";
import { handleWorkspaceFolders, withWorkspaceFolders } from "./handlers/workspace-folders.ts";
import { LiveTables } from "./live-tables.ts";
import { Practice } from "./practice.ts";
import { ReadingProgress } from "./reading-progress.ts";
import { ScorePublisher } from "./score-publisher.ts";
import { Scorer, type ScoringHost } from "./scorer.ts";
import { Scores } from "./scores.ts";
import { TextVersions } from "./text-versions.ts";
import { UnreadFiles } from "./unread-files.ts";

/** The part of the server that the services of the language see; filled when the server starts. */
export interface ServerState {
  scores: Scores | undefined;
  settings: EditorSettings | undefined;
  /** Ids of the commands the editor can run. */
  commands: readonly string[];
  readonly versions: TextVersions;
  readonly unread: UnreadFiles;
}

export function newServerState(): ServerState {
  return {
    scores: undefined,
    settings: undefined,
    commands: [],
    versions: new TextVersions(),
    unread: new UnreadFiles(),
  };
}

/** Wires connection, language and scores, and starts listening. */
export function startServer(
  connection: Connection,
  services: { shared: LangiumSharedServices; drillwright: DrillwrightServices },
  state: ServerState,
  host: ScoringHost,
): void {
  const { shared } = services;
  const openDocuments = shared.workspace.TextDocuments;
  const lowering = new Lowering(services.drillwright, (uri) => uri.toString());
  const practice = new Practice(services.drillwright.names.Names);
  const scorer = new Scorer(services.drillwright, lowering, host, state.versions);
  const progress = new ReadingProgress(connection);
  const scores = new Scores(practice, scorer, progress, () => openDocuments.keys());
  const settings = new EditorSettings(connection);
  const publisher = new DiagnosticsPublisher(connection);
  const scorePublisher = new ScorePublisher(connection, publisher, settings);
  state.scores = scores;
  state.settings = settings;

  addLanguageHandlers(connection, shared);
  handleSelectionRanges(connection, shared);
  publishMistakes(shared, publisher, state.versions);
  state.unread.onFound((uri, problem) => {
    const folders = shared.workspace.WorkspaceManager.workspaceFolders ?? [];
    connection.console.warn(`Not read: ${nameIn(folders, uri)}: ${problem}`);
  });
  handleProject(connection, shared);
  handleImportTables(connection, shared, host);
  handlePlanCard(connection, services.drillwright, lowering);
  handlePlanGoals(connection, shared, lowering);
  handleSessions(connection, shared, practice);
  handleCurriculumPlayers(connection, services.drillwright, lowering, scores);
  handleSessionScore(connection, shared, scores);
  handleSessionReport(connection, shared, scores);
  handleSelectSession(connection, practice, scores);
  handleScore(connection, shared, scores);
  handleWorkspaceFolders(connection, shared, settings);

  const show = () => {
    if (settings.isKnown) scorePublisher.publish(scores.current());
  };
  const refresh = () =>
    scores.refresh().catch((error: unknown) => connection.console.error(`Scoring failed: ${String(error)}`));
  const scoreNewData = async () => {
    await refresh();
    tellProjectChanged(connection, false);
  };
  scores.onChange(show);
  if (host.growingFiles !== undefined) {
    const live = new LiveTables(scorer.dataFiles, () => scores.tables(), scoreNewData);
    scores.onChange(() => void live.follow());
  }
  settings.onChange(show);
  // What has been found in a file is written to the editor in the next turn of the event loop; scores wait for that.
  const refreshNext = () => void delayNextTick().then(refresh);
  shared.workspace.DocumentBuilder.onBuildPhase(DocumentState.Validated, refreshNext);
  openDocuments.onDidClose(() => void refresh());
  shared.lsp.DocumentUpdateHandler.onWatchedFilesChange(async ({ changes }) => {
    const changed = await Promise.all(changes.map(({ uri }) => scorer.dataFiles.changed(uri)));
    if (changed.includes(true)) await scoreNewData();
  });

  connection.onInitialize((params) => {
    settings.initialize(params);
    scorePublisher.initialize(params);
    progress.initialize(params);
    state.commands = (params.initializationOptions as ClientOptions | undefined)?.commands ?? [];
    return shared.lsp.LanguageServer.initialize(params).then(withSelectionRanges).then(withWorkspaceFolders);
  });
  connection.onInitialized((params) => {
    shared.lsp.LanguageServer.initialized(params);
    settings.read();
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

/** The path of a file from the folder that holds it. */
function nameIn(folders: readonly WorkspaceFolder[], uri: string): string {
  const folder = folders.find((each) => uri.startsWith(`${each.uri}/`));
  return decodeURIComponent(folder === undefined ? uri : uri.slice(folder.uri.length + 1));
}

function publishMistakes(
  shared: LangiumSharedServices,
  publisher: DiagnosticsPublisher,
  versions: TextVersions,
): void {
  const builder = shared.workspace.DocumentBuilder;
  builder.onUpdate((_changed, deleted) => {
    for (const uri of deleted) publisher.setMistakes(uri.toString(), undefined, []);
  });
  builder.onDocumentPhase(DocumentState.Validated, (document: LangiumDocument) => {
    if (isLibraryUri(document.uri)) return; // nobody can change it
    const uri = document.uri.toString();
    publisher.setMistakes(uri, versions.of(uri), document.diagnostics ?? []);
  });
}
