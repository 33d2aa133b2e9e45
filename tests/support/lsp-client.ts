/** A language client without an editor: speaks to the bundled server over standard input and output. */
import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import {
  type ClientCapabilities,
  createProtocolConnection,
  type Diagnostic,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type Range,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";

const SERVER = fileURLToPath(new URL("../../dist/extension/server/lsp.cjs", import.meta.url));

/** How long a test waits for what must come. It never decides whether something is fast enough. */
const PATIENCE = 60_000;

export class LspClient {
  readonly folder: string;
  readonly connection: ProtocolConnection;
  readonly capabilities: InitializeResult["capabilities"];
  readonly notifications: { method: string; params: unknown }[] = [];
  private readonly process: ChildProcess;
  private readonly diagnostics = new Map<string, readonly Diagnostic[]>();
  private readonly waiting = new Set<() => void>();
  /** Why the server is no longer there, if it is not. */
  private readonly ended: () => string | undefined;
  private readonly versions = new Map<string, number>();

  private constructor(
    folder: string,
    process: ChildProcess,
    connection: ProtocolConnection,
    capabilities: InitializeResult["capabilities"],
    ended: () => string | undefined,
  ) {
    this.ended = ended;
    this.folder = folder;
    this.process = process;
    this.connection = connection;
    this.capabilities = capabilities;
  }

  /** Starts a server on a new folder that holds these files, or a copy of `from`. */
  static async start({
    files = {},
    from,
    settings,
    initializationOptions,
    window,
  }: {
    files?: Readonly<Record<string, string>>;
    from?: string;
    settings?: unknown;
    initializationOptions?: unknown;
    /** What the client can show beside its documents. */
    window?: ClientCapabilities["window"];
  }): Promise<LspClient> {
    const folder = mkdtempSync(join(tmpdir(), "drillwright-lsp-"));
    if (from !== undefined) cpSync(from, folder, { recursive: true });
    for (const [path, text] of Object.entries(files)) writeIn(folder, path, text);
    const server = spawn(process.execPath, [SERVER, "--stdio"], { stdio: ["pipe", "pipe", "inherit"] });
    const connection = createProtocolConnection(
      new StreamMessageReader(server.stdout as NodeJS.ReadableStream),
      new StreamMessageWriter(server.stdin as NodeJS.WritableStream),
    );
    let ended: string | undefined;
    server.once("exit", (code) => {
      ended = `The server ended with code ${code}.`;
      connection.dispose(); // answers whatever is still waited for with an error
    });
    const early: { method: string; params: unknown }[] = [];
    let client: LspClient | undefined;
    connection.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
      items.map(() => settings ?? {}),
    );
    connection.onRequest("client/registerCapability", () => null);
    connection.onRequest("workspace/inlayHint/refresh", () => null);
    connection.onRequest("workspace/codeLens/refresh", () => null);
    connection.onRequest("window/workDoneProgress/create", () => null);
    const onEvery = connection.onNotification as unknown as (
      handler: (method: string, params: unknown) => void,
    ) => void;
    onEvery((method, params) => {
      if (client === undefined) early.push({ method, params });
      else client.receive(method, params);
    });
    connection.listen();
    const rootUri = pathToFileURL(folder).toString();
    const { capabilities } = await connection.sendRequest<InitializeResult>("initialize", {
      processId: process.pid,
      rootUri,
      workspaceFolders: [{ uri: rootUri, name: "test" }],
      initializationOptions,
      capabilities: {
        ...(window && { window }),
        workspace: {
          configuration: settings !== undefined,
          didChangeWatchedFiles: { dynamicRegistration: true },
          inlayHint: { refreshSupport: true },
          codeLens: { refreshSupport: true },
        },
        textDocument: { publishDiagnostics: { relatedInformation: true } },
      },
    });
    client = new LspClient(folder, server, connection, capabilities, () => ended);
    for (const { method, params } of early) client.receive(method, params);
    await connection.sendNotification("initialized", {});
    return client;
  }

  uri(path: string): string {
    return pathToFileURL(join(this.folder, path)).toString();
  }

  async open(path: string, text: string): Promise<void> {
    this.versions.set(path, 1);
    await this.connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri: this.uri(path), languageId: "drillwright", version: 1, text },
    });
  }

  /** Replaces the whole text, or a part of it. */
  async change(path: string, text: string, range?: Range): Promise<void> {
    const version = (this.versions.get(path) ?? 0) + 1;
    this.versions.set(path, version);
    await this.connection.sendNotification("textDocument/didChange", {
      textDocument: { uri: this.uri(path), version },
      contentChanges: [range === undefined ? { text } : { range, text }],
    });
  }

  /** Of the text as it was sent last; undefined for a file that was never opened. */
  versionOf(path: string): number | undefined {
    return this.versions.get(path);
  }

  async close(path: string): Promise<void> {
    await this.connection.sendNotification("textDocument/didClose", {
      textDocument: { uri: this.uri(path) },
    });
  }

  /** Writes a file and tells the server, as an editor that watches the folder would. */
  async write(path: string, text: string): Promise<void> {
    writeIn(this.folder, path, text);
    await this.connection.sendNotification("workspace/didChangeWatchedFiles", {
      changes: [{ uri: this.uri(path), type: 2 }],
    });
  }

  request<Result>(method: string, params: unknown): Promise<Result> {
    return this.connection.sendRequest(method, params);
  }

  /** The diagnostics of a file, as soon as they are as wanted. Fails with what there was instead. */
  async diagnosticsOf(
    path: string,
    wanted: (diagnostics: readonly Diagnostic[]) => boolean = () => true,
  ): Promise<readonly Diagnostic[]> {
    const uri = this.uri(path);
    const current = () => this.diagnostics.get(uri);
    await this.until(
      () => current() !== undefined && wanted(current() ?? []),
      () => `diagnostics of ${path}: ${JSON.stringify(current(), null, 1)}`,
    );
    return current() ?? [];
  }

  /** Every list of diagnostics that was published of a file, the first first. */
  published(path: string): PublishDiagnosticsParams[] {
    const uri = this.uri(path);
    return this.notifications
      .filter(({ method }) => method === "textDocument/publishDiagnostics")
      .map(({ params }) => params as PublishDiagnosticsParams)
      .filter((published) => published.uri === uri);
  }

  /** Waits for something to become true. */
  async until(condition: () => boolean, describe: () => string): Promise<void> {
    const deadline = Date.now() + PATIENCE;
    while (!condition()) {
      const end = this.ended();
      if (end !== undefined) throw new Error(end);
      if (Date.now() > deadline) throw new Error(`Waited in vain. There were ${describe()}`);
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, 100);
        this.waiting.add(() => {
          clearTimeout(timer);
          resolve();
        });
      });
    }
  }

  /** Ends the server and removes its folder. */
  async stop(): Promise<void> {
    if (this.ended() === undefined) {
      await this.connection.sendRequest("shutdown");
      await this.connection.sendNotification("exit");
      this.connection.dispose();
    }
    this.process.kill();
    rmSync(this.folder, { recursive: true, force: true });
  }

  private receive(method: string, params: unknown): void {
    this.notifications.push({ method, params });
    if (method === "textDocument/publishDiagnostics") {
      const { uri, diagnostics } = params as { uri: string; diagnostics: Diagnostic[] };
      this.diagnostics.set(uri, diagnostics);
    }
    for (const wake of this.waiting) wake();
    this.waiting.clear();
  }
}

function writeIn(folder: string, path: string, text: string): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}
