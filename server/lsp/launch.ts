/** The file that an editor starts: runs the language server with the code that was compiled for its last run. */
import { join } from "node:path";
import { requireCompiled } from "../node/compiled-code.ts";
import { setEngineFlag } from "../node/engine-flag.ts";

/** Else what each keystroke leaves is collected every few keys, while somebody types: a fifth of the time of a key. */
setEngineFlag("--semi-space-growth-factor=16");

requireCompiled(join(__dirname, "server.cjs"), "lsp");
