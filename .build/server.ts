/** Bundles the command line and the language server: half of what a start from the sources costs is finding modules. */
import { chmodSync, copyFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type BuildOptions, build, type Metafile } from "esbuild";
import { toolVersion } from "../server/node/version.ts";
import { buildInParts } from "./parts.ts";
import { separate, silent, withoutCopies, withoutParser, withoutProtocol } from "./plugins.ts";
import { SELDOM_CALLED, SELDOM_CALLED_BY_EDITORS } from "./seldom-called.ts";
import { thirdPartyNotices } from "./third-party-notices.ts";

const root = fileURLToPath(new URL("..", import.meta.url));

const options = {
  absWorkingDir: root,
  bundle: true,
  platform: "node",
  target: "node22",
  format: "cjs",
  supported: { "dynamic-import": false }, // becomes `require`, which works in a script with kept code
  minify: true,
  legalComments: "none", // the notices below say it in full
  metafile: true,
  logLevel: "warning",
  plugins: [separate, silent],
  define: { DRILLWRIGHT_VERSION: JSON.stringify(toolVersion()) },
  logOverride: { "empty-import-meta": "silent" }, // used by programs that run from their sources only
} as const satisfies BuildOptions;

const [, commandLine, , languageServer, worker] = await Promise.all([
  build({
    ...options,
    entryPoints: ["server/cli/launch.ts"],
    outfile: "dist/cli/drillwright.cjs",
    banner: { js: "#!/usr/bin/env node" },
    target: "node14", // so that it can tell an old Node that it is too old
  }),
  buildInParts(
    {
      ...options,
      entryPoints: ["server/cli/main.ts"],
      outfile: join(root, "dist/cli/main.cjs"),
      plugins: [...options.plugins, withoutProtocol, withoutParser("./documentation/index.js")],
    },
    SELDOM_CALLED,
  ),
  build({ ...options, entryPoints: ["server/lsp/launch.ts"], outfile: "dist/extension/server/lsp.cjs" }),
  buildInParts(
    {
      ...options,
      entryPoints: ["server/lsp/main.ts"],
      outfile: join(root, "dist/extension/server/server.cjs"),
      plugins: [...options.plugins, withoutCopies, withoutParser()],
    },
    { ...SELDOM_CALLED, ...SELDOM_CALLED_BY_EDITORS },
  ),
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
for (const file of ["lsp.cjs", "server.cjs", "server.late.cjs"]) {
  copyFileSync(join(root, "dist/extension/server", file), join(root, "dist/cli", file));
}

await writeNotices([languageServer, worker.metafile], "dist/extension/server");
await writeNotices([commandLine, languageServer], "dist/cli");

/** The licences of all that went into these bundles. */
async function writeNotices(bundles: readonly Metafile[], folder: string): Promise<void> {
  const inputs = Object.assign({}, ...bundles.map((bundle) => bundle.inputs));
  writeFileSync(join(root, folder, "third-party-notices.txt"), await thirdPartyNotices({ inputs }, root));
}
