/** Bundles the command line and the language server, each to one file: half of what a start costs is finding modules. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type BuildOptions, build, type Metafile } from "esbuild";
import { toolVersion } from "./node/version.ts";

const root = fileURLToPath(new URL("..", import.meta.url));

const options = {
  absWorkingDir: root,
  bundle: true,
  platform: "node",
  target: "node22",
  format: "cjs",
  minify: true,
  // Not in the package: names of functions are enough to report a fault, and the sources are public.
  sourcemap: false,
  keepNames: false,
  legalComments: "none", // the notices below say it in full
  metafile: true,
  logLevel: "warning",
  define: { DRILLWRIGHT_VERSION: JSON.stringify(toolVersion()) },
  logOverride: { "empty-import-meta": "silent" }, // used by programs that run from their sources only
} as const satisfies BuildOptions;

const commandLine = await build({
  ...options,
  entryPoints: ["server/cli/main.ts"],
  outfile: "dist/cli/drillwright.cjs",
  banner: { js: "#!/usr/bin/env node" },
});
writeNotices(commandLine.metafile, "dist/cli");

const languageServer = await build({
  ...options,
  entryPoints: ["server/lsp/main.ts"],
  outfile: "dist/extension/server/lsp.cjs",
});
writeNotices(languageServer.metafile, "dist/extension/server");

/** The licences of the packages that went into a bundle, as they ask for. */
function writeNotices({ inputs }: Metafile, folder: string): void {
  const packages = new Set(Object.keys(inputs).flatMap((input) => packageFolder(input) ?? []));
  const notices = [...packages].sort().map((path) => notice(join(root, path)));
  writeFileSync(join(root, folder, "third-party-notices.txt"), notices.join(`\n${"-".repeat(80)}\n\n`));
}

/** `node_modules/a/node_modules/b` for a file in it. */
function packageFolder(file: string): string | undefined {
  return /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0];
}

function notice(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const files = readdirSync(folder).filter((file) => /^(licen[cs]e|notice)/i.test(file));
  const texts = files.map((file) => readFileSync(join(folder, file), "utf8").trim());
  return `${[`${name} ${version} (${license})`, ...texts].join("\n\n")}\n`;
}
