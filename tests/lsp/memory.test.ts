/** What a text was before an edit is let go: memory does not grow with the day. */
import { PassThrough } from "node:stream";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { EmptyFileSystemProvider, type FileSystemProvider, URI } from "langium";
import { expect, test } from "vitest";
import {
  createConnection,
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { createEditorServices } from "../../language/editor/editor-module.ts";
import { serverModule, sharedServerModule } from "../../server/lsp/server-module.ts";
import { newServerState, startServer } from "../../server/lsp/start-server.ts";
import { scoresChanged } from "../../shared/protocol/scores-changed.ts";

const EDITS = 30;

const FILES = new Map([
  [
    "file:///coach/session.drill",
    `use "./plan"
player "P-01" { right-handed }
source "Table" { column "Carry" is carry in yd }
session "First" { plan "Gate" player "P-01" date 2026-10-12 data "shots.csv" from "Table" }
`,
  ],
  ["file:///coach/shots.csv", "Carry\n152\n149\n155\n151\n"],
]);
const PLAN_FILE = "file:///coach/plan.drill";
const plan = (limit: number) => `plan "Gate" {
  for 7-iron
  block "Carry" test {
    4 shots
    success average carry at least ${limit} yd
  }
}
`;

/** A folder in memory. */
const folder: FileSystemProvider = Object.assign(new EmptyFileSystemProvider(), {
  stat: async (uri: URI) => ({
    uri,
    isFile: FILES.has(uri.toString()),
    isDirectory: !FILES.has(uri.toString()),
  }),
  exists: async (uri: URI) => FILES.has(uri.toString()),
  readFile: async (uri: URI) => FILES.get(uri.toString()) ?? "",
  readBinary: async (uri: URI) => new TextEncoder().encode(FILES.get(uri.toString()) ?? ""),
  readDirectory: async () =>
    [...FILES.keys()].map((file) => ({ uri: URI.parse(file), isFile: true, isDirectory: false })),
});

/** A server in this process, and a client that speaks to it. */
async function start() {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const connection = createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toClient));
  const state = newServerState();
  const services = createEditorServices(
    { connection, fileSystemProvider: () => folder },
    { module: serverModule(state), sharedModule: sharedServerModule(state) },
  );
  startServer(connection, services, state, { sha256: String, version: "0.0.0" });
  const client = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  let scored = () => {};
  client.onNotification(scoresChanged.method, () => scored());
  client.onRequest("client/registerCapability", () => null);
  client.listen();
  const rootUri = "file:///coach";
  await client.sendRequest("initialize", {
    processId: null,
    rootUri,
    workspaceFolders: [{ uri: rootUri, name: "coach" }],
    capabilities: {},
  });
  await client.sendNotification("initialized", {});
  return {
    client,
    documents: services.shared.workspace.LangiumDocuments,
    /** Does something, and waits until its score is told. */
    untilScored: async (run: () => Promise<void>) => {
      const told = new Promise<void>((resolve) => {
        scored = resolve;
      });
      await run();
      await told;
    },
  };
}

setFlagsFromString("--expose-gc");
const collect = runInNewContext("gc") as () => void;

test("trees of texts that were edited are collected, however often", async () => {
  const { client, documents, untilScored } = await start();
  const tree = () => documents.getDocument(URI.parse(PLAN_FILE))?.parseResult.value as object;
  await untilScored(() =>
    client.sendNotification("textDocument/didOpen", {
      textDocument: { uri: PLAN_FILE, languageId: "drillwright", version: 0, text: plan(100) },
    }),
  );
  const trees: WeakRef<object>[] = [];
  for (let version = 1; version <= EDITS; version++) {
    trees.push(new WeakRef(tree()));
    // Every other text turns the verdict, so that each is scored and told.
    const text = plan(version % 2 === 0 ? 100 + version : 300 + version);
    await untilScored(() =>
      client.sendNotification("textDocument/didChange", {
        textDocument: { uri: PLAN_FILE, version },
        contentChanges: [{ text }],
      }),
    );
  }
  // What is weakly held is let go between two turns of the loop, not within one.
  await new Promise((resolve) => setTimeout(resolve));
  collect();
  const left = trees.filter((each) => each.deref() !== undefined);
  expect(left.length).toBeLessThanOrEqual(1);
  client.dispose();
});
