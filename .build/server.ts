/** Bundles the command line and the language server: half of what a start from the sources costs is finding modules. */
import { chmodSync, copyFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type BuildOptions, build, type Metafile, type Plugin } from "esbuild";
import { toolVersion } from "../server/node/version.ts";
import { thirdPartyNotices } from "./third-party-notices.ts";

const root = fileURLToPath(new URL("..", import.meta.url));

/** Bundles that are loaded when they are needed: the source that is imported, and the file that stands beside it. */
const SEPARATE = { "./main.ts": "./main.cjs", "../../lsp/main.ts": "./lsp.cjs" } as const;

const separate: Plugin = {
  name: "separate",
  setup({ onResolve }) {
    onResolve({ filter: /main\.ts$/ }, ({ path, kind }) => {
      const file = SEPARATE[path as keyof typeof SEPARATE];
      const isLazy = kind === "dynamic-import" || kind === "require-call";
      return isLazy && file !== undefined ? { path: file, external: true } : undefined;
    });
  },
};

const options = {
  absWorkingDir: root,
  bundle: true,
  platform: "node",
  target: "node22",
  format: "cjs",
  minify: true,
  legalComments: "none", // the notices below say it in full
  metafile: true,
  logLevel: "warning",
  plugins: [separate],
  define: { DRILLWRIGHT_VERSION: JSON.stringify(toolVersion()) },
  logOverride: { "empty-import-meta": "silent" }, // used by programs that run from their sources only
} as const satisfies BuildOptions;

const [, commandLine, languageServer, worker] = await Promise.all([
  build({
    ...options,
    entryPoints: ["server/cli/launch.ts"],
    outfile: "dist/cli/drillwright.cjs",
    banner: { js: "#!/usr/bin/env node" },
    target: "node14", // so that it can tell an old Node that it is too old
  }),
  build({ ...options, entryPoints: ["server/cli/main.ts"], outfile: "dist/cli/main.cjs" }),
  build({ ...options, entryPoints: ["server/lsp/main.ts"], outfile: "dist/extension/server/lsp.cjs" }),
  build({
    ...options,
    entryPoints: ["server/lsp/browser.ts"],
    outfile: "dist/extension/server/lsp.browser.js",
    platform: "browser",
    target: "es2024",
    format: "iife",
  }),
]);
chmodSync(join(root, "dist/cli/drillwright.cjs"), 0o755);
copyFileSync(join(root, "dist/extension/server/lsp.cjs"), join(root, "dist/cli/lsp.cjs"));

await writeNotices([languageServer.metafile, worker.metafile], "dist/extension/server");
await writeNotices([commandLine.metafile, languageServer.metafile], "dist/cli");

/** The licences of all that went into these bundles. */
async function writeNotices(bundles: readonly Metafile[], folder: string): Promise<void> {
  const inputs = Object.assign({}, ...bundles.map((bundle) => bundle.inputs));
  writeFileSync(join(root, folder, "third-party-notices.txt"), await thirdPartyNotices({ inputs }, root));
}
