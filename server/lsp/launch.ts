/** The file that an editor starts: runs the language server with the code that was compiled for its last run. */
import { join } from "node:path";
import { requireCompiled } from "../node/compiled-code.ts";

requireCompiled(join(__dirname, "server.cjs"), "lsp");
