/** Our server, and what one would take instead. */
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import { ensureServer } from "../../workbench/host/tools.ts";

export interface Contender {
  readonly name: string;
  readonly command: readonly string[];
  readonly languageId: "drillwright" | "json";
}

/** @param folder where a bundle of the bare server may be put. */
export async function contendersIn(folder: string): Promise<{
  readonly ours: Contender;
  readonly bare: Contender;
  readonly json: Contender;
}> {
  const root = fileURLToPath(new URL("../../../", import.meta.url));
  const bundle = join(folder, "bare.cjs");
  buildSync({
    entryPoints: [join(root, "tests/bench/bare-server.ts")],
    bundle: true,
    minify: true,
    platform: "node",
    format: "cjs",
    outfile: bundle,
    logLevel: "error",
  });
  const own = process.env.DRILLWRIGHT_SERVER ?? join(root, "dist/extension/server/lsp.cjs");
  return {
    ours: { name: "drillwright", command: [own, "--stdio"], languageId: "drillwright" },
    bare: { name: "bare Langium server", command: [bundle, "--stdio"], languageId: "drillwright" },
    json: {
      name: "JSON server with schema",
      command: [await jsonServer(), "--stdio"],
      languageId: "json",
    },
  };
}

/** The JSON server of the editor itself, as the workbench tests install it: it answers as fast as it can when asked. */
async function jsonServer(): Promise<string> {
  const editor = join(dirname(await ensureServer()), "..");
  return join(editor, "extensions/json-language-features/server/dist/node/jsonServerMain.js");
}
