/**
 * The language server as a Node process, over standard input and output (`--stdio`) or the channel an editor chose.
 * Importing this file starts it: it serves until the editor says goodbye.
 */
import { createHash } from "node:crypto";
import { NodeFileSystem } from "langium/node";
import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { createEditorServices } from "../../language/editor/editor-module.ts";
import { growingFile } from "../node/growing-file.ts";
import { toolVersion } from "../node/version.ts";
import { ClientFileSystem } from "./client-file-system.ts";
import { MixedFileSystem } from "./mixed-file-system.ts";
import { serverModule, sharedServerModule } from "./server-module.ts";
import { newServerState, startServer } from "./start-server.ts";

const connection = createConnection(ProposedFeatures.all);
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
