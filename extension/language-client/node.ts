import { type ExtensionContext, type LogOutputChannel, l10n, Uri } from "vscode";
import { LanguageClient, type ServerOptions, TransportKind } from "vscode-languageclient/node";
import { LANGUAGE_ID } from "../drill-document.ts";
import { answerAboutFiles } from "./files.ts";
import { clientOptions } from "./options.ts";

/** The client of a server that is a process of its own. */
export function createLanguageClient(context: ExtensionContext, output: LogOutputChannel): LanguageClient {
  const run = {
    module: Uri.joinPath(context.extensionUri, "server", "lsp.cjs").fsPath,
    transport: TransportKind.ipc,
  };
  const server: ServerOptions = { run, debug: { ...run, options: { execArgv: ["--inspect"] } } };
  const client = new LanguageClient(
    LANGUAGE_ID,
    l10n.t("Drillwright Language Server"),
    server,
    clientOptions(output),
  );
  answerAboutFiles(client);
  return client;
}
