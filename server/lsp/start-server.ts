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
import {
  CodeLensRefreshRequest,
  type Connection,
  type Diagnostic,
  DiagnosticSeverity,
  InlayHintRefreshRequest,
} from "vscode-languageserver";
import type { DrillwrightServices } from "../../language/core-module.ts";
import type { ClientOptions } from "../../shared/protocol/client-options.ts";
import { scoresChanged } from "../../shared/protocol/scores-changed.ts";
import { DEFAULT_SETTINGS, type Level, type Settings, settingsFrom } from "../../shared/settings.ts";
import { DiagnosticsPublisher } from "./diagnostics-publisher.ts";
import { handleScore } from "./handlers/score.ts";
import { handleSelectSession } from "./handlers/select-session.ts";
import { handleSessions } from "./handlers/sessions.ts";
import { type Score, Scores } from "./scores.ts";
import { type Levels, verdictDiagnostics } from "./verdict-diagnostics.ts";

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
  const scores = new Scores(services.drillwright, { ...host, openFiles: () => openDocuments.keys() });
  state.scores = scores;

  addLanguageHandlers(connection, shared);
  publishMistakes(shared, publisher);
  handleSessions(connection, scores);
  handleSelectSession(connection, scores);
  handleScore(connection, scores);

  let refreshes = { codeLens: false, inlayHint: false };
  const show = (current: readonly Score[]) => {
    publisher.setVerdicts(verdictsOf(current, state.settings));
    for (const [file, plans] of byFile(current))
      connection.sendNotification(scoresChanged.method, { file, plans });
    if (refreshes.codeLens) connection.sendRequest(CodeLensRefreshRequest.type).catch(() => {});
    if (refreshes.inlayHint) connection.sendRequest(InlayHintRefreshRequest.type).catch(() => {});
  };
  const refresh = () => {
    scores.refresh().catch((error: unknown) => connection.console.error(`Scoring failed: ${String(error)}`));
  };
  scores.onChange(show);
  shared.workspace.DocumentBuilder.onBuildPhase(DocumentState.Validated, refresh);
  openDocuments.onDidClose(refresh);
  shared.lsp.DocumentUpdateHandler.onWatchedFilesChange(({ changes }) => {
    if (changes.filter(({ uri }) => scores.forget(uri)).length > 0) refresh();
  });

  const readSettings = async () => {
    state.settings = settingsFrom(await connection.workspace.getConfiguration("drillwright"));
    show(scores.current());
  };
  let hasConfiguration = false;
  connection.onInitialize((params) => {
    const { workspace } = params.capabilities;
    hasConfiguration = workspace?.configuration ?? false;
    refreshes = {
      codeLens: workspace?.codeLens?.refreshSupport ?? false,
      inlayHint: workspace?.inlayHint?.refreshSupport ?? false,
    };
    state.commands = (params.initializationOptions as ClientOptions | undefined)?.commands ?? [];
    return shared.lsp.LanguageServer.initialize(params);
  });
  connection.onInitialized((params) => {
    shared.lsp.LanguageServer.initialized(params);
    if (hasConfiguration) void readSettings();
  });
  connection.onDidChangeConfiguration(({ settings }) => {
    if (hasConfiguration) void readSettings();
    else {
      state.settings = settingsFrom((settings as { drillwright?: unknown } | undefined)?.drillwright);
      show(scores.current());
    }
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

function verdictsOf(scores: readonly Score[], settings: Settings): Map<string, Diagnostic[]> {
  const all = new Map<string, Diagnostic[]>();
  if (!settings["drillwright.verdicts.show"]) return all;
  const levels = levelsFrom(settings);
  for (const { report } of scores) {
    if (report === undefined) continue;
    for (const [uri, diagnostics] of verdictDiagnostics(report, levels)) {
      all.set(uri, [...(all.get(uri) ?? []), ...diagnostics]);
    }
  }
  return all;
}

function byFile(scores: readonly Score[]): Map<string, Score["summary"][]> {
  const files = new Map<string, Score["summary"][]>();
  for (const { summary } of scores) {
    files.set(summary.plan.file, [...(files.get(summary.plan.file) ?? []), summary]);
  }
  return files;
}

const SEVERITIES: Readonly<Record<Level, DiagnosticSeverity | null>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
  none: null,
};

function levelsFrom(settings: Settings): Levels {
  return {
    met: SEVERITIES[settings["drillwright.verdicts.levels.met"]],
    missed: SEVERITIES[settings["drillwright.verdicts.levels.missed"]],
    undecided: SEVERITIES[settings["drillwright.verdicts.levels.undecided"]],
    "not-measured": SEVERITIES[settings["drillwright.verdicts.levels.notMeasured"]],
  };
}
