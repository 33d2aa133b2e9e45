import { type ExtensionContext, type LogOutputChannel, l10n, Uri } from "vscode";
import {
  LanguageClient,
  type LanguageClientOptions,
  RevealOutputChannelOn,
  type ServerOptions,
  TransportKind,
} from "vscode-languageclient/node";
import { COMMANDS } from "../shared/commands.ts";
import type { ClientOptions } from "../shared/protocol/client-options.ts";
import { LANGUAGE_ID, LIBRARY_SCHEME } from "./drill-document.ts";

/** The client of the language server, which is a process of its own. It is not started yet. */
export function createLanguageClient(context: ExtensionContext, output: LogOutputChannel): LanguageClient {
  const run = {
    module: Uri.joinPath(context.extensionUri, "server", "lsp.cjs").fsPath,
    transport: TransportKind.ipc,
  };
  const server: ServerOptions = { run, debug: { ...run, options: { execArgv: ["--inspect"] } } };
  const options: LanguageClientOptions = {
    // The server reads plans and data from disk. A file of another scheme, such as the old side of a comparison,
    // would be one it cannot find the neighbours of; its text would only be reported twice.
    documentSelector: ["file", "untitled", LIBRARY_SCHEME].map((scheme) => ({
      scheme,
      language: LANGUAGE_ID,
    })),
    diagnosticCollectionName: LANGUAGE_ID,
    outputChannel: output,
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    initializationOptions: { commands: Object.values(COMMANDS).map(({ id }) => id) } satisfies ClientOptions,
    progressOnInitialization: true,
  };
  return new LanguageClient(LANGUAGE_ID, l10n.t("Drillwright Language Server"), server, options);
}
