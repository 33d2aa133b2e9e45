/**
 * The language server as a Node process, over standard input and output (`--stdio`) or the channel an editor chose.
 * Importing this file starts it: it serves until the editor says goodbye.
 */
import { Console } from "node:console";
import { createHash } from "node:crypto";
import { NodeFileSystem } from "langium/node";
import { type Connection, createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { createEditorServices } from "../../language/editor/editor-module.ts";
import { growingFile } from "../node/growing-file.ts";
import { toolVersion } from "../node/version.ts";
import { ClientFileSystem } from "./client-file-system.ts";
import { MixedFileSystem } from "./mixed-file-system.ts";
import { serverModule, sharedServerModule } from "./server-module.ts";
import { newServerState, startServer } from "./start-server.ts";
import { StdioMessageWriter } from "./stdio-writer.ts";

const connection = process.argv.includes("--stdio") ? overStdio() : createConnection(ProposedFeatures.all);
const state = newServerState();
const services = createEditorServices(
  {
    connection,
    fileSystemProvider: () =>
      new MixedFileSystem(NodeFileSystem.fileSystemProvider(), new ClientFileSystem(connection)),
  },
  { module: serverModule(state), sharedModule: sharedServerModule(state) },
);

startServer(connection, services, state, {
  version: toolVersion(),
  sha256: (content) => createHash("sha256").update(content).digest("hex"),
  growingFiles: (uri) => (uri.scheme === "file" ? growingFile(uri.fsPath) : undefined),
});

function overStdio(): Connection {
  globalThis.console = new Console(process.stderr); // standard output is for messages alone
  const writer = new StdioMessageWriter(process.stdout) as unknown as NodeJS.WritableStream; // either is taken
  return createConnection(ProposedFeatures.all, process.stdin, writer);
}
