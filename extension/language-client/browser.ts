import { type ExtensionContext, type LogOutputChannel, l10n, Uri } from "vscode";
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from "vscode-languageclient/browser";
import { LANGUAGE_ID } from "../drill-document.ts";
import { answerAboutFiles } from "./files.ts";
import { clientOptions } from "./options.ts";

type WebWorker = ConstructorParameters<typeof BrowserMessageReader>[0] & { terminate(): void };

declare const Worker: new (script: string) => WebWorker;

/** The client of a server that is a web worker. */
export function createLanguageClient(context: ExtensionContext, output: LogOutputChannel): LanguageClient {
  const script = Uri.joinPath(context.extensionUri, "server", "lsp.browser.js").toString(true);
  let worker: WebWorker | undefined;
  const start = async (): Promise<MessageTransports> => {
    worker?.terminate(); // the one before does not end by itself
    worker = new Worker(script);
    return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
  };
  const client = new LanguageClient(
    LANGUAGE_ID,
    l10n.t("Drillwright Language Server"),
    start,
    clientOptions(output),
  );
  answerAboutFiles(client);
  context.subscriptions.push({ dispose: () => worker?.terminate() });
  return client;
}
