/** The language server as a web worker. Running this script starts it: it serves until the editor ends the worker. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from "vscode-languageserver/browser";
import { createEditorServices } from "../../language/editor/editor-module.ts";
import { ClientFileSystem } from "./client-file-system.ts";
import { serverModule, sharedServerModule } from "./server-module.ts";
import { newServerState, startServer } from "./start-server.ts";

/** Put in when the tool is built. */
declare const DRILLWRIGHT_VERSION: string;
/** The worker itself. */
declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
const state = newServerState();
const services = createEditorServices(
  { connection, fileSystemProvider: () => new ClientFileSystem(connection) },
  { module: serverModule(state), sharedModule: sharedServerModule(state) },
);

startServer(connection, services, state, {
  version: DRILLWRIGHT_VERSION,
  sha256: (content) => bytesToHex(sha256(content)),
});
