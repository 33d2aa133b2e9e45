/** The messages of `shared/protocol`, sent and heard through the language client. */
import { type Disposable, l10n } from "vscode";
import { type LanguageClient, State } from "vscode-languageclient/node";
import type { NotificationMessage, RequestMessage } from "../shared/protocol/message.ts";

/** Asks the server, once it has started. Rejects when it does not run, or cannot answer. */
export async function ask<Params, Result>(
  client: LanguageClient,
  message: RequestMessage<Params, Result>,
  params: Params,
): Promise<Result> {
  if (client.state === State.Stopped || client.state === State.StartFailed)
    throw new Error(l10n.t("The language server does not run."));
  return client.sendRequest<Result>(message.method, params);
}

/** Listens to what the server tells, also after it was restarted. */
export function hear<Params>(
  client: LanguageClient,
  message: NotificationMessage<Params>,
  listener: (params: Params) => void,
): Disposable {
  return client.onNotification(message.method, listener);
}
