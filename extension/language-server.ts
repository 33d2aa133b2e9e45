import { type CancellationToken, Disposable, EventEmitter, l10n } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { NotificationMessage, RequestMessage } from "../shared/protocol/message.ts";

/** Makes a client that is not started yet. */
export type CreateClient = () => Promise<BaseLanguageClient>;

type Listener = (params: unknown) => void;

/**
 * The language server as the rest of the extension sees it: the messages of `shared/protocol`, asked and heard. The
 * script of its client is large: it is loaded and started when somebody needs it first.
 */
export class LanguageServer implements Disposable {
  private readonly create: CreateClient;
  private readonly listeners = new Map<string, Set<Listener>>();
  private readonly started = new EventEmitter<void>();
  private readonly stopped = new EventEmitter<void>();
  private client: BaseLanguageClient | undefined;
  private starting: Promise<void> | undefined;
  /** How often the server has come to run. */
  starts = 0;

  /** The server has come to run, for the first time or again. */
  readonly onDidStart = this.started.event;
  /** The server does not run any more, whether it was asked to end or not. */
  readonly onDidStop = this.stopped.event;

  constructor(create: CreateClient) {
    this.create = create;
  }

  get isRunning(): boolean {
    return this.client?.isRunning() ?? false;
  }

  /** Starts the server, unless somebody has. Rejects when it cannot start, and says so again to who asks again. */
  start(): Promise<void> {
    this.starting ??= this.startNew();
    return this.starting;
  }

  /** Starts the server anew, also after it has given up. */
  async restart(): Promise<void> {
    await this.end();
    await this.start();
  }

  /** Asks the server. Rejects when it does not run or cannot answer. */
  async ask<Params, Result>(
    message: RequestMessage<Params, Result>,
    params: Params,
    cancellation?: CancellationToken,
  ): Promise<Result> {
    await this.start();
    if (!this.client?.needsStop()) throw new Error(l10n.t("The language server does not run."));
    // A cancellation that is not there would be sent as one more argument.
    const args = cancellation === undefined ? [] : [cancellation];
    return this.client.sendRequest<Result>(message.method, params, ...args);
  }

  /** Listens to what the server tells, whenever it is started. */
  hear<Params>(message: NotificationMessage<Params>, listener: (params: Params) => void): Disposable {
    let listeners = this.listeners.get(message.method);
    if (listeners === undefined) {
      listeners = new Set();
      this.listeners.set(message.method, listeners);
      if (this.client !== undefined) tell(this.client, message.method, listeners);
    }
    listeners.add(listener as Listener);
    return new Disposable(() => listeners.delete(listener as Listener));
  }

  /** Ends the server, if it runs. */
  async end(): Promise<void> {
    await this.starting?.catch(() => {}); // one that starts cannot be ended yet
    const client = this.client;
    this.client = undefined;
    this.starting = undefined;
    if (client?.isRunning()) await client.dispose();
  }

  dispose(): void {
    this.started.dispose();
    this.stopped.dispose();
  }

  private async startNew(): Promise<void> {
    const client = await this.create();
    this.client = client;
    let wasRunning = false;
    client.onDidChangeState(() => {
      if (wasRunning && !client.isRunning()) this.stopped.fire();
      if (!wasRunning && client.isRunning()) {
        this.starts++;
        this.started.fire();
      }
      wasRunning = client.isRunning();
    });
    for (const [method, listeners] of this.listeners) tell(client, method, listeners);
    await client.start();
  }
}

function tell(client: BaseLanguageClient, method: string, listeners: ReadonlySet<Listener>): void {
  client.onNotification(method, (params: unknown) => {
    for (const listener of listeners) listener(params);
  });
}
